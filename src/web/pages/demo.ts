/** The demo room moves in and out. */
import type { Context, Hono } from 'hono';
import { paths } from '../../../views/paths.ts';
import { emptyDemo, firstRoom } from '../../actions/index.ts';
import { demoIsHere } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { formIdOf, onwards } from './onwards.ts';

export function demoRoutes(app: Hono<DoorEnv>, house: House): void {
  app.post(paths.startDemo, (c) => moveIn(house, c));
  app.post(paths.removeDemo, (c) => moveOut(house, c));
}

/** A demo room that is here stays as it is. */
async function moveIn({ context, furnish }: House, c: Context): Promise<Response> {
  if (await context.store.ask(demoIsHere)) return c.redirect(paths.sunday, 303);
  return onwards(c, await furnish(context), paths.sunday);
}

async function moveOut({ context }: House, c: Context): Promise<Response> {
  const done = await emptyDemo(context, { formId: await formIdOf(c) });
  const room = done.ok ? await firstRoom(context) : done;
  return onwards(c, room, paths.start);
}
