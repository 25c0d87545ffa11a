/** Where to go on to: never off this server. */

/** A path of this server; anything else leads home. */
export const safePath = (path: unknown): string =>
  typeof path === 'string' && /^\/(?![/\\])/.test(path) ? path : '/';
