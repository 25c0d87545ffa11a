/** An address of the list of paths as a route: its codes are parameters. */

/** `paths.animal(':code')` as '/animals/:code'. */
export const route = (path: string): string => path.replaceAll('%3A', ':');
