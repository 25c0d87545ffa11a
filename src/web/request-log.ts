/** Names each request and writes one line about it; never its query, body or cookies. */
import { randomBytes } from 'node:crypto';
import type { MiddlewareHandler } from 'hono';
import type { DoorEnv, Log } from './door.ts';

const ID_BYTES = 6;

export const requestLog =
  (log: Log): MiddlewareHandler<DoorEnv> =>
  async (c, next) => {
    const requestId = randomBytes(ID_BYTES).toString('hex');
    c.set('requestId', requestId);
    const began = performance.now();
    await next();
    const ms = Math.round(performance.now() - began);
    log({
      level: 'info',
      request: requestId,
      method: c.req.method,
      path: c.req.path,
      status: c.res.status,
      ms,
    });
  };

/** Writes lines of JSON to stderr. */
export const logToStderr: Log = (line) => {
  process.stderr.write(`${JSON.stringify({ time: new Date().toISOString(), ...line })}\n`);
};
