/** The help page. */
import type { Hono } from 'hono';
import { HelpPage } from '../../../views/pages/help.tsx';
import { paths } from '../../../views/paths.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { page, visit } from './visit.ts';

export function helpRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.help, async (c) => page(c, HelpPage(await visit(house, c))));
}
