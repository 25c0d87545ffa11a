/** Records what can be seen of a fly cup. */

import { z } from 'zod';
import type { CupLook } from '../husbandry/larder/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { civilDay, formId, oneOf, someText } from './fields.ts';
import { findBin } from './find.ts';
import { action } from './perform.ts';

export const LOOKS = [
  'started',
  'larvae',
  'producing',
  'slow',
  'finished',
  'crashed',
  'mites',
] as const satisfies readonly CupLook[];

export const seeCup = action({
  verb: 'see-cup',
  schema: z.strictObject({ bin: someText, look: oneOf(LOOKS), day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now }, { bin: code, look, day }) => {
    const bin = await findBin(tx, code);
    if (!bin.ok) return bin;
    if (bin.value.role !== 'cup') return err(problem('not-a-cup', `"${code}" is not a cup.`, 'bin'));
    return ok({
      summary: `Cup ${code}: ${look}`,
      entries: [{ day: day ?? now.today, kind: 'cup looked', bin: code, details: { look } }],
      reply: null,
    });
  },
});
