/** Lets an animal or a group leave: sold, given away, lost, or taken off the books because it never was. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, oneOf, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { action } from './perform.ts';

export const WAYS_TO_LEAVE = ['sold', 'given away', 'lost', 'entered by mistake'] as const;

export const takeAway = action({
  verb: 'take-away',
  schema: z.strictObject({
    animal: someText,
    reason: oneOf(WAYS_TO_LEAVE),
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async ({ tx, now }, { animal: code, reason, day }) => {
    const animal = await findAnimal(tx, code);
    if (!animal.ok) return animal;
    const gone = { leftReason: reason, leftDay: day ?? now.today } as const;
    const summary =
      reason === 'entered by mistake' ? `Took ${code} off the books: ${reason}` : `${code} left: ${reason}`;
    return ok({ summary, puts: { animal: [{ ...animal.value, ...gone }] }, reply: { animal: code } });
  },
});
