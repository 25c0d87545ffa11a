/** What may be said of a bin: counted, looked at, weighed, its size, thrown out, moved, and how a cup looks. */

import type { Context, Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { type BinAct, paths } from '../../../views/paths.ts';
import { civilDay, heads, headsOrNone, oneOf } from '../../actions/fields.ts';
import {
  countBin,
  discard,
  loadSnapshot,
  lookBin,
  move,
  seeCup,
  seeSize,
  weighBin,
} from '../../actions/index.ts';
import { LEVELS } from '../../actions/look-bin.ts';
import { LOOKS } from '../../actions/see-cup.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { DoorEnv } from '../door.ts';
import { type Lengths, lengthsChosen } from './choices.ts';
import type { House } from './house.ts';
import { showBin } from './larder.ts';
import { lengthsIn } from './lengths-in.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { anyText, mass, needed, typed } from './typed.ts';

const day = typed(civilDay);
const at = (act: BinAct): string => route(paths.binAct(':code', act));

const about = (house: House, act: BinAct) => ({
  form: () => act,
  next: (c: Context) => paths.bin(codeOf(c)),
  again: (c: Context, refused: Refused) => showBin(house, c, refused),
});

export function binActRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('look'),
    posted(house, {
      ...about(house, 'look'),
      shape: () => ({ level: oneOf(LEVELS), day }),
      act: (given, { c, formId }) => lookBin(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('cup-look'),
    posted(house, {
      ...about(house, 'cup-look'),
      shape: () => ({ look: oneOf(LOOKS), day }),
      act: (given, { c, formId }) => seeCup(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('weigh'),
    posted(house, {
      ...about(house, 'weigh'),
      shape: () => ({ mass, day }),
      act: ({ mass: massMg, ...given }, { c, formId }) =>
        weighBin(context, { bin: codeOf(c), ...given, massMg, formId }),
      fields: { massMg: 'mass' },
    }),
  );
  app.post(
    at('discard'),
    posted(house, {
      ...about(house, 'discard'),
      shape: () => ({ heads: typed(heads), day }),
      act: (given, { c, formId }) => discard(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  sizedRoutes(app, house);
}

/** Acts that speak of a size. */
function sizedRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('size'),
    posted(house, {
      ...about(house, 'size'),
      shape: () => ({ sizeClass: needed, day }),
      act: async ({ sizeClass, ...given }, { c, formId }) => {
        const lengths = await lengthsOf(house, codeOf(c), { value: sizeClass, field: 'sizeClass' });
        return lengths.ok
          ? seeSize(context, { bin: codeOf(c), ...given, ...lengths.value, formId })
          : lengths;
      },
    }),
  );
  app.post(
    at('count'),
    posted(house, {
      ...about(house, 'count'),
      shape: () => ({ heads: typed(headsOrNone), size: anyText, day }),
      act: async ({ size, ...given }, { c, formId }) => {
        const chosen = { value: size, field: 'size' };
        const lengths = size === '' ? ok({}) : await lengthsOf(house, codeOf(c), chosen);
        return lengths.ok
          ? countBin(context, { bin: codeOf(c), ...given, ...lengths.value, formId })
          : lengths;
      },
    }),
  );
  app.post(
    at('move'),
    posted(house, {
      ...about(house, 'move'),
      shape: () => ({ heads: typed(heads), to: needed, day }),
      act: async (given, { c, formId }) => {
        const lengths = lengthsIn(await loadSnapshot(context), codeOf(c), { field: 'heads' });
        return lengths.ok ? move(context, { from: codeOf(c), ...given, ...lengths.value, formId }) : lengths;
      },
    }),
  );
}

interface Chosen {
  readonly value: string;
  readonly field: string;
}

/** Lengths of a size chosen for what is in this bin. */
async function lengthsOf(
  { context }: House,
  code: string,
  { value, field }: Chosen,
): Promise<Result<Lengths>> {
  const { bins, facts } = await loadSnapshot(context);
  const species = facts.species.get(bins.find((bin) => bin.code === code)?.species ?? '');
  return species === undefined
    ? err(problem('unknown-bin', `There is no bin "${code}" in use.`))
    : lengthsChosen(value, species, field);
}
