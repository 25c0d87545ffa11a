/** Records the mass of all prey in a bin, and of a part of it that was counted and weighed by itself. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err } from '../husbandry/result.ts';
import { MG_PER_GRAM } from '../husbandry/units.ts';
import { observe } from './bin-fields.ts';
import { civilDay, figureWithin, formId, heads, massMg, someText } from './fields.ts';
import { action } from './perform.ts';

const cv = figureWithin({
  code: 'spread-out-of-range',
  least: 0,
  most: 2,
  wanted: 'a spread of single weights over their mean, such as 0.2',
});

export const weighBin = action({
  verb: 'weigh-bin',
  schema: z.strictObject({
    bin: someText,
    massMg,
    sample: z.strictObject({ heads, massMg, cv: cv.nullable().default(null) }).optional(),
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin, massMg: mass, sample, day }) => {
    if (sample !== undefined && sample.massMg > mass)
      return err(problem('sample-heavier', 'The sample weighs more than the whole bin.', 'sample.massMg'));
    return observe(
      scene,
      {
        day: day ?? scene.now.today,
        kind: 'weighed',
        bin,
        details: { massMg: mass, ...(sample === undefined ? {} : { sample }) },
      },
      `Weighed ${bin}: ${mass / MG_PER_GRAM} g`,
    );
  },
});
