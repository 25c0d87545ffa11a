/** The acts of a sac: laid, taken from the mother, out, first fed, come to nothing, changed, removed. */

import type { Context, Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay, heads, oneOf } from '../../actions/fields.ts';
import {
  cancelChange,
  editChange,
  endSac,
  hatchSac,
  noteSac,
  pullSac,
  settleSac,
} from '../../actions/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { planTyped } from './plan-typed.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { showSacs } from './sacs.ts';
import { anyText, lengthTyped, maybe, needed, percent, revision, ticked, typed } from './typed.ts';

const day = () => ({ day: typed(civilDay) });

/** What the forms of the page share. */
const onSacs = (house: House, act: string) => ({
  form: (c: Context) => `${act}-${codeOf(c)}`,
  next: () => paths.sacs,
  again: (c: Context, refused: Refused) => showSacs(house, c, refused),
  fields: { change: '', gaugeMm: 'gauge' },
});

export function sacRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.sacs, (c) => showSacs(house, c));
  noteRoute(app, house);
  stepRoutes(app, house);
  endRoutes(app, house);
  editRoutes(app, house);
}

function noteRoute(app: Hono<DoorEnv>, house: House): void {
  app.post(
    paths.sacs,
    posted(house, {
      ...onSacs(house, 'sac'),
      form: () => 'sac',
      shape: () => ({
        animal: needed,
        laidFrom: typed(civilDay),
        laidTo: maybe(civilDay),
        count: typed(heads),
        chance: percent,
        shareKept: percent,
        motherFasts: ticked,
      }),
      act: (given, { formId }) => noteSac(house.context, { ...given, formId }),
    }),
  );
}

function stepRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    route(paths.sacAct(':code', 'pulled')),
    posted(house, {
      ...onSacs(house, 'pulled'),
      shape: day,
      act: (given, { c, formId }) => pullSac(context, { change: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    route(paths.sacAct(':code', 'hatched')),
    posted(house, {
      ...onSacs(house, 'hatched'),
      shape: () => ({ ...day(), count: maybe(heads) }),
      act: (given, { c, formId }) => hatchSac(context, { change: codeOf(c), ...given, formId }),
    }),
  );
}

function endRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    route(paths.sacAct(':code', 'settled')),
    posted(house, {
      ...onSacs(house, 'settled'),
      shape: () => ({ ...day(), count: typed(heads), name: anyText, shelf: anyText }),
      act: (given, { c, formId }) => settleSac(context, { change: codeOf(c), ...given, formId }),
      next: (_: Context, reply: { animal: string }) => paths.animal(reply.animal),
    }),
  );
  app.post(
    route(paths.sacAct(':code', 'ended')),
    posted(house, {
      ...onSacs(house, 'ended'),
      shape: () => ({ ...day(), how: oneOf(['dud', 'eaten']) }),
      act: (given, { c, formId }) => endSac(context, { change: codeOf(c), ...given, formId }),
    }),
  );
}

function editRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    route(paths.sacAct(':code', 'edit')),
    posted(house, {
      ...onSacs(house, 'edit'),
      shape: (unit) => ({
        from: typed(civilDay),
        to: typed(civilDay),
        count: typed(heads),
        gauge: lengthTyped(unit),
        chance: percent,
        shareKept: percent,
        asOf: revision,
      }),
      act: async ({ gauge, ...given }, { c, unit, formId }) => {
        const typed = await planTyped(house, codeOf(c), { ...given, gauge, unit });
        return editChange(context, { ...given, ...typed, change: codeOf(c), formId });
      },
    }),
  );
  app.post(
    route(paths.sacAct(':code', 'cancel')),
    posted(house, {
      ...onSacs(house, 'cancel'),
      shape: () => ({}),
      act: (_, { c, formId }) => cancelChange(context, { change: codeOf(c), formId }),
    }),
  );
}
