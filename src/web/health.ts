/** Whether the program runs, and whether it can answer. */
import { Hono } from 'hono';
import { revision, type Store } from '../store/index.ts';
import type { DoorEnv, Log } from './door.ts';

export const healthRoutes = (store: Store, log: Log): Hono<DoorEnv> =>
  new Hono<DoorEnv>()
    .get('/livez', (c) => c.json({ live: true }))
    .get('/readyz', async (c) => {
      const reasons = await reasonsAgainst(store, log);
      return c.json({ ready: reasons.length === 0, reasons }, reasons.length === 0 ? 200 : 503);
    });

async function reasonsAgainst(store: Store, log: Log): Promise<readonly string[]> {
  try {
    await store.ask(revision);
    return [];
  } catch (error) {
    log({ level: 'error', event: 'not ready', error: String(error) });
    return ['The database does not answer.'];
  }
}
