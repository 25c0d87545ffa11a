/** Moves prey from one bin to another of the same species, of one size or of all. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, flag, formId, heads, preyMm, someText } from './fields.ts';
import { inOrder } from './lot-fields.ts';
import { action } from './perform.ts';
import { transfer } from './transfer.ts';

export const move = action({
  verb: 'move',
  schema: z.strictObject({
    from: someText,
    to: someText,
    heads,
    /** Both, or neither for prey of all sizes. */
    fromMm: preyMm.optional(),
    toMm: preyMm.optional(),
    day: civilDay.optional(),
    sure: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { fromMm, toMm, ...given }) => {
    const sized = fromMm === undefined || toMm === undefined ? null : { fromMm, toMm };
    const size = sized === null ? ok(null) : inOrder({ heads: given.heads, ...sized });
    if (!size.ok) return size;
    return transfer(scene, {
      ...given,
      day: given.day,
      lengths: () => sized,
      name: '',
      role: ({ role }) => role,
      did: 'Moved',
    });
  },
});
