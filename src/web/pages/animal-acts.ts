/** What is written down about one animal: moulted, measured, premoult, matured, died. */

import type { Context, Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { type AnimalAct, paths } from '../../../views/paths.ts';
import { civilDay, heads } from '../../actions/fields.ts';
import {
  recordDied,
  recordMatured,
  recordMeasure,
  recordMoult,
  recordPremoult,
} from '../../actions/index.ts';
import type { DoorEnv } from '../door.ts';
import { showRefused } from './animal-refused.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { length, maybe, maybeLength, ticked, typed } from './typed.ts';

const day = () => ({ day: typed(civilDay) });

const at = (act: AnimalAct): string => route(paths.animalAct(':code', act));

/** What all these forms have in common: where they go on, and what is shown when one is refused. */
const about = (house: House, act: AnimalAct) => ({
  form: () => act,
  next: (c: Context) => paths.animal(codeOf(c)),
  again: (c: Context, refused: Refused) => showRefused(house, c, refused),
  fields: { gaugeMm: 'gauge' },
});

export function animalActRoutes(app: Hono<DoorEnv>, house: House): void {
  sizeRoutes(app, house);
  stateRoutes(app, house);
}

function sizeRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('moulted'),
    posted(house, {
      ...about(house, 'moulted'),
      shape: (unit) => ({
        found: typed(civilDay),
        earliest: maybe(civilDay),
        gauge: maybeLength(unit),
        smaller: ticked,
      }),
      act: ({ gauge, ...given }, { c, formId }) =>
        recordMoult(context, { animal: codeOf(c), ...given, gaugeMm: gauge, formId }),
    }),
  );
  app.post(
    at('measured'),
    posted(house, {
      ...about(house, 'measured'),
      shape: (unit) => ({ gauge: length(unit), smaller: ticked, ...day() }),
      act: ({ gauge, ...given }, { c, formId }) =>
        recordMeasure(context, { animal: codeOf(c), ...given, gaugeMm: gauge, formId }),
    }),
  );
}

function stateRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('premoult'),
    posted(house, {
      ...about(house, 'premoult'),
      shape: day,
      act: (given, { c, formId }) => recordPremoult(context, { animal: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('matured'),
    posted(house, {
      ...about(house, 'matured'),
      shape: day,
      act: (given, { c, formId }) => recordMatured(context, { animal: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('died'),
    posted(house, {
      ...about(house, 'died'),
      shape: () => ({ heads: typed(heads), ...day() }),
      act: (given, { c, formId }) => recordDied(context, { animal: codeOf(c), ...given, formId }),
      next: (c, { left }: { left: number }) => (left > 0 ? paths.animal(codeOf(c)) : paths.animals),
    }),
  );
}
