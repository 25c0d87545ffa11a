/** Records the dead taken out of a bin. */
import { z } from 'zod';
import { observe } from './bin-fields.ts';
import { civilDay, flag, formId, heads, someText } from './fields.ts';
import { findBin } from './find.ts';
import { action } from './perform.ts';
import { unlessFewer } from './taking-out.ts';

export const foundDead = action({
  verb: 'found-dead',
  schema: z.strictObject({
    bin: someText,
    heads,
    day: civilDay.optional(),
    /** The keeper insists: there were more than the record says. */
    sure: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin, heads: many, day: on, sure }) => {
    const day = on ?? scene.now.today;
    const found = await findBin(scene.tx, bin);
    if (!found.ok) return found;
    const there = await unlessFewer(scene, { bin: found.value, day, heads: many, sure });
    if (!there.ok) return there;
    return observe(scene, { day, kind: 'found dead', bin, heads: many }, `Took ${many} dead out of ${bin}`);
  },
});
