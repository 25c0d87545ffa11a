/** What may be said of a bin: counted, looked at, weighed, its size, the dead, the grown, and how a cup looks. */

import type { Hono } from 'hono';
import { heads, headsOrNone, oneOf } from '../../actions/fields.ts';
import {
  countBin,
  dieOff,
  discard,
  foundDead,
  lookBin,
  seeAdults,
  seeCup,
  seeSize,
  sexAdults,
  weighBin,
} from '../../actions/index.ts';
import { LEVELS } from '../../actions/look-bin.ts';
import { LOOKS } from '../../actions/see-cup.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok } from '../../husbandry/result.ts';
import type { DoorEnv } from '../door.ts';
import { about, at, day, lengthsOf } from './bin-post.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf } from './route.ts';
import { anyText, mass, maybe, maybeMass, needed, ticked, typed } from './typed.ts';

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
      shape: () => ({ mass, sampleHeads: maybe(heads), sampleMass: maybeMass, day }),
      act: ({ mass: massMg, sampleHeads, sampleMass, ...given }, { c, formId }) => {
        const both = sampleHeads !== undefined && sampleMass !== undefined;
        if (!both && (sampleHeads ?? sampleMass) !== undefined) return Promise.resolve(err(HALF_A_SAMPLE));
        const sample = both ? { sample: { heads: sampleHeads, massMg: sampleMass } } : {};
        return weighBin(context, { bin: codeOf(c), ...given, massMg, ...sample, formId });
      },
      fields: { massMg: 'mass', 'sample.massMg': 'sampleMass', 'sample.heads': 'sampleHeads' },
    }),
  );
  app.post(
    at('discard'),
    posted(house, {
      ...about(house, 'discard'),
      shape: () => ({ heads: typed(heads), day, sure: ticked }),
      act: (given, { c, formId }) => discard(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  sizedRoutes(app, house);
  livingRoutes(app, house);
}

const HALF_A_SAMPLE = problem(
  'half-a-sample',
  'Of a sample both are needed: how many, and what they weigh.',
  'sampleHeads',
);

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
      shape: () => ({
        heads: typed(headsOrNone),
        size: anyText,
        grown: maybe(headsOrNone),
        day,
        sure: ticked,
      }),
      act: async ({ size, ...given }, { c, formId }) => {
        const chosen = { value: size, field: 'size' };
        const lengths = size === '' ? ok({}) : await lengthsOf(house, codeOf(c), chosen);
        return lengths.ok
          ? countBin(context, { bin: codeOf(c), ...given, ...lengths.value, formId })
          : lengths;
      },
    }),
  );
}

/** Acts that tell of the living besides their number. */
function livingRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('dead'),
    posted(house, {
      ...about(house, 'dead'),
      shape: () => ({ heads: typed(heads), day, sure: ticked }),
      act: (given, { c, formId }) => foundDead(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('adults'),
    posted(house, {
      ...about(house, 'adults'),
      shape: () => ({ day }),
      act: (given, { c, formId }) => seeAdults(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('sexed'),
    posted(house, {
      ...about(house, 'sexed'),
      shape: () => ({ females: typed(headsOrNone), males: typed(headsOrNone), day }),
      act: (given, { c, formId }) => sexAdults(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('die-off'),
    posted(house, {
      ...about(house, 'die-off'),
      shape: () => ({ left: typed(headsOrNone), day }),
      act: (given, { c, formId }) => dieOff(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
}
