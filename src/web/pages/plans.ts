/** Rooms, days away and planned changes: what the settings page holds in lists. */
import type { Hono } from 'hono';
import { z } from 'zod';
import { paths } from '../../../views/paths.ts';
import { civilDay, heads, oneOf } from '../../actions/fields.ts';
import { addRoom, cancelChange, editRoom, editSettings, planChange } from '../../actions/index.ts';
import { civilDate, type DayRange } from '../../husbandry/calendar.ts';
import { settings } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { onSettings } from './settings.ts';
import { anyText, length, maybeText, needed, temperature, typed } from './typed.ts';

export function planRoutes(app: Hono<DoorEnv>, house: House): void {
  roomRoute(app, house);
  absenceRoutes(app, house);
  changeRoutes(app, house);
}

/** Form 'room-<code>', or 'room-new'. */
function roomRoute(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(paths.settingsAct('rooms'), async (c) => {
    const room = String((await c.req.parseBody()).room ?? '');
    const form = `room-${room === '' ? 'new' : room}`;
    const post = posted(house, {
      ...onSettings(house, () => form),
      shape: (unit) => ({
        room: anyText,
        name: needed,
        dayTemp: temperature(unit),
        nightTemp: temperature(unit),
      }),
      act: ({ name, dayTemp, nightTemp }, { formId }) => {
        const fields = { name, dayTempC: dayTemp, nightTempC: nightTemp, formId };
        return room === '' ? addRoom(context, fields) : editRoom(context, { room, ...fields });
      },
      fields: { dayTempC: 'dayTemp', nightTempC: 'nightTemp' },
    });
    return post(c);
  });
}

const dates = () => ({ from: typed(civilDay), to: typed(civilDay) });

/** Days away as dates, the earliest first. */
async function absences({ context }: House): Promise<{ from: string; to: string }[]> {
  const found = await context.store.ask(settings);
  return found.absences.map(({ from, to }: DayRange) => ({ from: civilDate(from), to: civilDate(to) }));
}

function absenceRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    paths.settingsAct('absences'),
    posted(house, {
      ...onSettings(house, () => 'absences'),
      shape: dates,
      act: async (given, { formId }) => {
        const all = [...(await absences(house)).filter(isOther(given)), given];
        const ordered = all.toSorted((a, b) => a.from.localeCompare(b.from));
        return editSettings(context, { absences: ordered, formId });
      },
      fields: { absences: 'to' },
    }),
  );
  app.post(
    paths.settingsAct('absences/remove'),
    posted(house, {
      ...onSettings(house, () => 'absences'),
      shape: dates,
      act: async (given, { formId }) =>
        editSettings(context, { absences: (await absences(house)).filter(isOther(given)), formId }),
    }),
  );
}

interface Dates {
  readonly from: string;
  readonly to: string;
}

const isOther =
  (given: Dates) =>
  ({ from, to }: Dates): boolean =>
    from !== given.from || to !== given.to;

const PERCENT = 100;
const percent = z
  .string()
  .trim()
  .default('')
  .transform((text, context): number => {
    const chance = text === '' ? PERCENT : Number(text);
    if (chance >= 0 && chance <= PERCENT) return chance / PERCENT;
    context.addIssue({ code: 'custom', message: `"${text}" is not a percentage from 0 to 100.` });
    return z.NEVER;
  });

function changeRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    paths.settingsAct('changes'),
    posted(house, {
      ...onSettings(house, () => 'changes'),
      shape: (unit) => ({
        ...dates(),
        kind: oneOf(['sac', 'arrival', 'sale']),
        animalKind: needed,
        animal: maybeText,
        chance: percent,
        count: typed(heads),
        gauge: length(unit),
        room: needed,
      }),
      act: ({ gauge, ...given }, { formId }) => planChange(context, { ...given, gaugeMm: gauge, formId }),
      fields: { gaugeMm: 'gauge', kind: 'animalKind' },
    }),
  );
  app.post(
    paths.settingsAct('changes/remove'),
    posted(house, {
      ...onSettings(house, () => 'changes'),
      shape: () => ({ change: needed }),
      act: (given, { formId }) => cancelChange(context, { ...given, formId }),
    }),
  );
}
