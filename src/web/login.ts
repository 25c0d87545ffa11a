/** The way in and out, on a server with a password; all else is shut without a session. */
import type { Context, MiddlewareHandler } from 'hono';
import { Hono } from 'hono';
import type { Now } from '../actions/index.ts';
import { problem } from '../husbandry/problems.ts';
import type { Store } from '../store/index.ts';
import type { DoorEnv, DoorPages } from './door.ts';
import { isWrite } from './origin.ts';
import { isPassword } from './password.ts';
import type { Refuse } from './refusal.ts';
import { safePath } from './safe-path.ts';
import { enter, isInside, leave } from './session.ts';
import { throttle } from './throttle.ts';

export interface Lock {
  readonly store: Store;
  readonly clock: () => Now;
  readonly pages: DoorPages;
  readonly refuse: Refuse;
}

const MS_PER_SECOND = 1000;

/** Paths anybody may ask for; every other path is for the keeper. */
const OPEN_PATHS = ['/livez', '/readyz', '/login'];
const isOpen = (path: string): boolean => OPEN_PATHS.includes(path) || path.startsWith('/assets/');

/** Turns away whoever has no session: pages lead to the login, anything else says so. */
export const onlyKeeper =
  ({ store, clock, refuse }: Lock): MiddlewareHandler<DoorEnv> =>
  async (c, next) => {
    if (isOpen(c.req.path) || (await isInside(c, store, secondsOf(clock())))) return next();
    const asksForPage = !isWrite(c.req.method) && c.req.header('accept')?.includes('text/html');
    if (!asksForPage || c.req.header('hx-request') === 'true') return refuse(c, 401, 'Log in first.');
    return c.redirect(`/login?next=${encodeURIComponent(c.req.path)}`, 303);
  };

export function loginRoutes(lock: Lock): Hono<DoorEnv> {
  const slow = throttle();
  return new Hono<DoorEnv>()
    .get('/login', (c) => c.html(lock.pages.login({ next: safePath(c.req.query('next')), problem: null })))
    .post('/login', async (c) => {
      const form = await c.req.parseBody();
      const next = safePath(form.next);
      const now = secondsOf(lock.clock());
      const wait = slow.enter(addressOf(c), now);
      if (wait > 0) return tooSoon(c, lock, { next, wait });
      const right = await isPassword(lock.store, String(form.password ?? ''));
      slow.leave(addressOf(c), right);
      if (!right) return c.html(lock.pages.login({ next, problem: WRONG }), 422);
      const entered = await enter(c, lock.store, now);
      return entered.ok ? c.redirect(next, 303) : lock.refuse(c, 503, entered.problem.sentence);
    })
    .post('/logout', async (c) => {
      const left = await leave(c, lock.store);
      return left.ok ? c.redirect('/login', 303) : lock.refuse(c, 503, left.problem.sentence);
    });
}

const WRONG = problem('wrong-password', 'This is not the password.', 'password');

function tooSoon(c: Context<DoorEnv>, { pages }: Lock, { next, wait }: { next: string; wait: number }) {
  const sentence = `Too many tries. Wait ${wait} ${wait === 1 ? 'second' : 'seconds'} and try again.`;
  c.header('Retry-After', String(wait));
  return c.html(pages.login({ next, problem: problem('too-soon', sentence, 'password') }), 429);
}

const secondsOf = ({ moment }: Now): number => Math.floor(Date.parse(moment) / MS_PER_SECOND);

/** The address the connection came from. */
function addressOf(c: Context): string {
  const incoming = (c.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming;
  return incoming?.socket?.remoteAddress ?? 'unknown';
}
