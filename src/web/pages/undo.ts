/** Any act is undone, or several as one step: one number, or numbers parted by commas. */
import type { Context, Hono } from 'hono';
import { paths } from '../../../views/paths.ts';
import { firstRoom, undo, undoMany } from '../../actions/index.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { safePath } from '../safe-path.ts';
import type { House } from './house.ts';
import { formIdOf, onwards } from './onwards.ts';
import { route } from './route.ts';

export function undoRoutes(app: Hono<DoorEnv>, house: House): void {
  app.post(route(paths.undo(':act')), (c) => undoStep(house, c));
}

async function undoStep(house: House, c: Context): Promise<Response> {
  const { context } = house;
  const [act = '', ...more] = (c.req.param('act') ?? '').split(',');
  const formId = await formIdOf(c);
  const done = await (more.length === 0
    ? undo(context, { act, formId })
    : undoMany(context, { acts: [act, ...more], formId }));
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
