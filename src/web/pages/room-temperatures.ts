/** Temperatures measured in a room, sent as a file. */
import type { Context, Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { readTemperatures } from '../../actions/index.ts';
import { sizeProblem } from '../../intake/index.ts';
import type { DoorEnv } from '../door.ts';
import { sayNext } from './cookies.ts';
import type { House } from './house.ts';
import { onSettings } from './settings.ts';

export function temperatureRoutes(app: Hono<DoorEnv>, house: House): void {
  app.post(paths.settingsAct('rooms/temperatures'), (c) => receive(house, c));
}

async function receive(house: House, c: Context): Promise<Response> {
  const { room, dates, file, formId } = await c.req.parseBody();
  const form = `temperatures-${room}`;
  const refuse = (field: string, sentence: string): Promise<Response> => {
    const refused: Refused = {
      form,
      values: { dates: String(dates ?? '') },
      problems: { [field]: sentence },
    };
    return onSettings(house, () => form).again(c, refused);
  };
  if (!(file instanceof File) || file.size === 0) return refuse('file', 'Choose a file that is not empty.');
  const tooLarge = sizeProblem(file.size);
  if (tooLarge !== null) return refuse('file', tooLarge.sentence);
  const done = await readTemperatures(house.context, {
    room: String(room ?? ''),
    bytes: new Uint8Array(await file.arrayBuffer()),
    ...(dates === 'dmy' || dates === 'mdy' ? { dates } : {}),
    ...(typeof formId === 'string' && formId !== '' ? { formId } : {}),
  });
  if (!done.ok) return refuse('file', done.problem.sentence);
  const { leftOut, why } = done.value.reply;
  if (leftOut > 0) sayNext(c, 'problem', `${leftOut} rows were left out. ${why}`);
  return c.redirect(paths.settings, 303);
}
