/** The door: every request is named, measured and checked here before a page or an action sees it. */
import { Hono } from 'hono';
import { compress } from 'hono/compress';
import type { Context } from '../actions/index.ts';
import { assetRoutes } from './assets.ts';
import { onlyShortBodies } from './body-size.ts';
import type { DoorEnv, DoorPages, Log } from './door.ts';
import { strictHeaders } from './headers.ts';
import { healthRoutes } from './health.ts';
import { onlyKnownHosts, ownNames } from './hosts.ts';
import { type Lock, loginRoutes, onlyKeeper } from './login.ts';
import { onlyOwnWrites } from './origin.ts';
import { refuseWith } from './refusal.ts';
import { requestLog } from './request-log.ts';

export interface AppOptions {
  /** Folder of the project, where assets lie. */
  readonly root: string;
  /** Whether a password guards the server; it must have been set in the store. */
  readonly locked: boolean;
  /** Names by which other devices call this server. */
  readonly hostNames: readonly string[];
  readonly pages: DoorPages;
  readonly log: Log;
  /** Adds the keeper's pages and programs' routes, all behind the door. */
  readonly mount: (app: Hono<DoorEnv>) => void;
}

export function createApp({ store, clock }: Context, options: AppOptions): Hono<DoorEnv> {
  const { root, locked, hostNames, pages, log, mount } = options;
  const refuse = refuseWith(pages);
  const lock: Lock = { store, clock, pages, refuse };
  const app = new Hono<DoorEnv>();
  app.use(requestLog(log), strictHeaders, compress());
  app.use(onlyKnownHosts(() => (locked ? [...hostNames, ...ownNames()] : []), refuse));
  app.use(onlyOwnWrites(refuse), onlyShortBodies(refuse));
  if (locked) app.use(onlyKeeper(lock));
  app.route('/', healthRoutes(store, log));
  app.route('/assets', assetRoutes(root));
  if (locked) app.route('/', loginRoutes(lock));
  mount(app);
  app.notFound((c) => refuse(c, 404, `There is nothing at ${c.req.path}.`));
  app.onError((error, c) => {
    log({ level: 'error', request: c.get('requestId'), error: error.message, stack: error.stack });
    return refuse(c, 500, 'Something went wrong here; nothing was half done.');
  });
  return app;
}
