/** The demo room moves in and out, and any act is undone. */
import type { Context, Hono } from 'hono';
import { paths } from '../../../views/paths.ts';
import { emptyDemo, firstRoom, undo } from '../../actions/index.ts';
import type { Result } from '../../husbandry/result.ts';
import { demoIsHere, rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { safePath } from '../safe-path.ts';
import { sayNext } from './cookies.ts';
import type { House } from './house.ts';
import { route } from './route.ts';

export function demoRoutes(app: Hono<DoorEnv>, house: House): void {
  app.post(paths.startDemo, (c) => moveIn(house, c));
  app.post(paths.removeDemo, (c) => moveOut(house, c));
  app.post(route(paths.undo(':act')), (c) => undoOne(house, c));
}

const formIdOf = async (c: Context): Promise<string | undefined> => {
  const { formId } = await c.req.parseBody();
  return typeof formId === 'string' && formId !== '' ? formId : undefined;
};

/** A Problem is said on the next page. */
function onwards(c: Context, done: Result<unknown>, path: string): Response {
  if (!done.ok) sayNext(c, 'problem', done.problem.sentence);
  return c.redirect(path, 303);
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

async function undoOne(house: House, c: Context): Promise<Response> {
  const { context } = house;
  const done = await undo(context, { act: c.req.param('act') ?? '', formId: await formIdOf(c) });
  const room = done.ok ? await firstRoom(context) : done;
  return onwards(c, room, await stillThere(house, cameFrom(c)));
}

/** The page, or the list it belonged to when its animal or bin is gone with the act. */
async function stillThere({ context }: House, path: string): Promise<string> {
  const [list, code] = /^(\/(?:animals|larder))\/([A-Z]\d+)/.exec(path)?.slice(1) ?? [];
  if (list === undefined || code === undefined) return path;
  const here = await context.store.ask(rowNamed(list === paths.animals ? 'animal' : 'bin', code));
  return here === null ? list : path;
}

/** The page the form stood on. */
function cameFrom(c: Context): string {
  const referer = c.req.header('referer') ?? '';
  if (!URL.canParse(referer)) return paths.sunday;
  const { host, pathname, search } = new URL(referer);
  const own = host === (c.req.header('host') ?? new URL(c.req.url).host);
  return own ? safePath(`${pathname}${search}`) : paths.sunday;
}
