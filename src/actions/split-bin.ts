/** Splits a bin: a number or a share of all sizes goes into a new bin of the same kind. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err } from '../husbandry/result.ts';
import { PERCENT } from '../husbandry/units.ts';
import { civilDay, figureWithin, flag, formId, heads, someText, text } from './fields.ts';
import { findBin } from './find.ts';
import { action } from './perform.ts';
import { transfer } from './transfer.ts';

const MOST_PERCENT = 99;
/** How much of a bin, in percent. */
const percentOfIt = figureWithin({
  code: 'share-out-of-range',
  least: 1,
  most: MOST_PERCENT,
  wanted: 'a share from 1 to 99 %, such as 50',
});

export const splitBin = action({
  verb: 'split-bin',
  schema: z.strictObject({
    bin: someText,
    /** One of the two. */
    heads: heads.optional(),
    percent: percentOfIt.optional(),
    name: text.default(''),
    day: civilDay.optional(),
    sure: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { heads: many, percent, ...given }) => {
    if ((many === undefined) === (percent === undefined))
      return err(problem('number-or-share', 'Say how many, or which share of it.', 'heads'));
    const from = await findBin(scene.tx, given.bin);
    if (from.ok && from.value.role === 'cup')
      return err(problem('is-a-cup', `${from.value.name} is a cup: start a new one from its flies.`, 'bin'));
    return transfer(scene, {
      ...given,
      from: given.bin,
      to: '',
      day: given.day,
      heads: many ?? { share: (percent ?? 0) / PERCENT },
      lengths: () => null,
      role: ({ role }) => role,
      did: 'Split',
    });
  },
});
