/** Bodies are measured while they stream in; what is too long is turned away before it is read. */
import type { MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { DoorEnv } from './door.ts';
import type { Refuse } from './refusal.ts';

const BYTES_PER_MB = 1024 * 1024;
const FORM_MB = 2;
const FILE_MB = 20;

const upTo = (megabytes: number, refuse: Refuse): MiddlewareHandler<DoorEnv> =>
  bodyLimit({
    maxSize: megabytes * BYTES_PER_MB,
    onError: (c) => refuse(c, 413, `This is larger than ${megabytes} MB, so nothing was done.`),
  });

/** Forms up to 2 MB, files up to 20 MB. */
export function onlyShortBodies(refuse: Refuse): MiddlewareHandler<DoorEnv> {
  const form = upTo(FORM_MB, refuse);
  const file = upTo(FILE_MB, refuse);
  return (c, next) =>
    c.req.header('content-type')?.startsWith('multipart/form-data') ? file(c, next) : form(c, next);
}
