/** Names that the form of a colony start and its reader share. */

/** The field of a trade size: 'want-medium', 'want-3-8-in'. */
export const sizeField = (name: string): string => `want-${name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`;
