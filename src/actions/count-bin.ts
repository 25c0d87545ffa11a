/** Records a count by hand; with lengths it says all there is in the bin. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err } from '../husbandry/result.ts';
import { observe } from './bin-fields.ts';
import { civilDay, formId, headsOrNone, preyMm, someText } from './fields.ts';
import { swapped } from './parse.ts';
import { action } from './perform.ts';

export const countBin = action({
  verb: 'count-bin',
  schema: z.strictObject({
    bin: someText,
    heads: headsOrNone,
    fromMm: preyMm.optional(),
    toMm: preyMm.optional(),
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin, heads, fromMm, toMm, day }) => {
    if ((fromMm === undefined) !== (toMm === undefined))
      return err(problem('half-a-size', 'Give both lengths, least and greatest, or none.', 'fromMm'));
    const backwards = swapped(fromMm ?? null, toMm ?? null, 'fromMm');
    if (backwards !== null) return err(backwards);
    const lengths = { fromMm: fromMm ?? null, toMm: toMm ?? null };
    const entry = { day: day ?? scene.now.today, kind: 'counted', bin, heads, ...lengths } as const;
    return observe(scene, entry, `Counted ${heads} in ${bin}`);
  },
});
