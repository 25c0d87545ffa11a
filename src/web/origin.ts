/** Writes are taken only from this server's own pages, and only in the shapes its forms and programs send. */
import type { Context, MiddlewareHandler } from 'hono';
import type { DoorEnv } from './door.ts';
import type { Refuse } from './refusal.ts';

const BODY_TYPES = ['application/x-www-form-urlencoded', 'multipart/form-data', 'application/json'];

export const isWrite = (method: string): boolean => method !== 'GET' && method !== 'HEAD';

export const onlyOwnWrites =
  (refuse: Refuse): MiddlewareHandler<DoorEnv> =>
  async (c, next) => {
    if (!isWrite(c.req.method)) return next();
    if (!isOwn(c))
      return refuse(c, 403, 'This did not come from a page of this server, so nothing was done.');
    if (!hasKnownBody(c)) return refuse(c, 415, 'Send a form or JSON; this was something else.');
    return next();
  };

/** The Origin names this very host; old browsers that send none must say that the site is the same. */
function isOwn(c: Context): boolean {
  const origin = c.req.header('origin');
  const host = c.req.header('host') ?? new URL(c.req.url).host;
  if (origin === undefined) return c.req.header('sec-fetch-site') === 'same-origin';
  return URL.canParse(origin) && new URL(origin).host === host.toLowerCase();
}

function hasKnownBody(c: Context): boolean {
  const type = c.req.header('content-type')?.split(';')[0]?.trim().toLowerCase();
  const empty = c.req.header('content-length') === '0' || c.req.raw.body === null;
  return type === undefined ? empty : BODY_TYPES.includes(type);
}
