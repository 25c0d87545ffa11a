/** An address of the list of paths as a route: its codes are parameters. */
import type { Context } from 'hono';

/** `paths.animal(':code')` as '/animals/:code'. */
export const route = (path: string): string => path.replaceAll('%3A', ':');

/** The code in the address of a request; '' where it names none. */
export const codeOf = (c: Context): string => c.req.param('code') ?? '';
