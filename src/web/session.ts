/** Sessions: a random name in a cookie, its hash in the database, an end when idle and an end in any case. */
import { createHash, randomBytes } from 'node:crypto';
import type { Context } from 'hono';
import { deleteCookie, getCookie, setCookie } from 'hono/cookie';
import { ok, type Result } from '../husbandry/result.ts';
import {
  endOldSessions,
  endSession,
  type Store,
  sessionOf,
  startSession,
  touchSession,
} from '../store/index.ts';

const COOKIE = 'preylarder_session';
const ID_BYTES = 32;
const SECONDS_PER_DAY = 86_400;
const IDLE_END_S = 14 * SECONDS_PER_DAY;
const LAST_END_S = 90 * SECONDS_PER_DAY;
const TOUCH_AFTER_S = 300;

const hashOf = (id: string): string => createHash('sha256').update(id).digest('base64');

/** Starts a session and hands its cookie to the browser; `now` in seconds since 1970. */
export async function enter(c: Context, store: Store, now: number): Promise<Result<null>> {
  const id = randomBytes(ID_BYTES).toString('base64url');
  const written = await store.write(async (tx) => {
    await endOldSessions(tx, { startedAt: now - LAST_END_S, usedAt: now - IDLE_END_S });
    await startSession(tx, hashOf(id), now);
    return ok(null);
  });
  if (written.ok) setCookie(c, COOKIE, id, { ...cookieOptions(c), maxAge: LAST_END_S });
  return written;
}

/** Whether the request belongs to a session that has not ended. */
export async function isInside(c: Context, store: Store, now: number): Promise<boolean> {
  const id = getCookie(c, COOKIE);
  if (id === undefined) return false;
  const session = await store.ask(sessionOf(hashOf(id)));
  if (session === null) return false;
  if (session.startedAt < now - LAST_END_S || session.usedAt < now - IDLE_END_S) return false;
  if (session.usedAt < now - TOUCH_AFTER_S)
    await store.write(async (tx) => ok(await touchSession(tx, hashOf(id), now)));
  return true;
}

/** Ends the session here and in the browser. */
export async function leave(c: Context, store: Store): Promise<Result<null>> {
  const id = deleteCookie(c, COOKIE, cookieOptions(c));
  if (id === undefined) return ok(null);
  return store.write(async (tx) => {
    await endSession(tx, hashOf(id));
    return ok(null);
  });
}

/** Secure wherever the browser came by https, also through a proxy. */
const cookieOptions = (c: Context) => ({
  path: '/',
  httpOnly: true,
  sameSite: 'Lax' as const,
  secure: c.req.url.startsWith('https:') || c.req.header('x-forwarded-proto') === 'https',
});
