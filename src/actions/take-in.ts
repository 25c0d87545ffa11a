/** Takes prey into a bin that no delivery was expected for: bought at a counter, a gift. */
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, headsOrNone, someText } from './fields.ts';
import { findBin } from './find.ts';
import { inOrder, lot } from './lot-fields.ts';
import { action } from './perform.ts';

export const takeIn = action({
  verb: 'take-in',
  schema: lot.extend({ bin: someText, dead: headsOrNone.default(0), day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now }, given) => {
    const bin = await findBin(tx, given.bin);
    if (!bin.ok) return bin;
    const came = inOrder(given);
    if (!came.ok) return came;
    const day = given.day ?? now.today;
    return ok({
      summary: `Took ${given.heads} into ${given.bin}`,
      entries: [{ day, kind: 'delivered', bin: given.bin, ...came.value, details: { dead: given.dead } }],
      reply: null,
    });
  },
});
