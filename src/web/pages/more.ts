/** The page that leads to all others. */
import type { Hono } from 'hono';
import { MorePage } from '../../../views/pages/more.tsx';
import { paths } from '../../../views/paths.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { page, visit } from './visit.ts';

export function moreRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.more, async (c) => page(c, MorePage({ shell: (await visit(house, c)).shell })));
}
