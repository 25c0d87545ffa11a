/** Rooms, days away and planned changes: what the settings page holds in lists. */
import type { Hono } from 'hono';
import { paths } from '../../../views/paths.ts';
import { civilDay, heads, oneOf } from '../../actions/fields.ts';
import { addRoom, cancelChange, editChange, editRoom, planChange } from '../../actions/index.ts';
import type { DoorEnv } from '../door.ts';
import { removeAbsence, saveAbsence, twoDates } from './absences.ts';
import type { House } from './house.ts';
import { planTyped } from './plan-typed.ts';
import { posted } from './posted.ts';
import { onSettings } from './settings.ts';
import { anyText, length, lengthTyped, maybeText, needed, percent, temperature, typed } from './typed.ts';

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

function absenceRoutes(app: Hono<DoorEnv>, house: House): void {
  const form = { ...onSettings(house, () => 'absences'), shape: twoDates };
  app.post(
    paths.settingsAct('absences'),
    posted(house, {
      ...form,
      act: (given, { formId }) => saveAbsence(house, given, formId),
      fields: { absences: 'to' },
    }),
  );
  app.post(
    paths.settingsAct('absences/remove'),
    posted(house, { ...form, act: (given, { formId }) => removeAbsence(house, given, formId) }),
  );
}

function changeRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    paths.settingsAct('changes'),
    posted(house, {
      ...onSettings(house, () => 'changes'),
      shape: (unit) => ({
        ...twoDates(),
        kind: oneOf(['arrival', 'sale']),
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
  app.post(paths.settingsAct('changes/edit'), async (c) => {
    const change = String((await c.req.parseBody()).change ?? '');
    const post = posted(house, {
      ...onSettings(house, () => `edit-${change}`),
      shape: (unit) => ({
        change: needed,
        from: typed(civilDay),
        to: typed(civilDay),
        count: typed(heads),
        gauge: lengthTyped(unit),
        chance: percent,
      }),
      act: async ({ gauge, ...given }, { unit, formId }) => {
        const typed = await planTyped(house, change, { ...given, gauge, unit });
        return editChange(context, { ...given, chance: typed.chance, gaugeMm: typed.gaugeMm, formId });
      },
      fields: { gaugeMm: 'gauge' },
    });
    return post(c);
  });
  app.post(
    paths.settingsAct('changes/remove'),
    posted(house, {
      ...onSettings(house, () => 'changes'),
      shape: () => ({ change: needed }),
      act: (given, { formId }) => cancelChange(context, { ...given, formId }),
    }),
  );
}
