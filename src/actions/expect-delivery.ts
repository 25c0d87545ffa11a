/** Writes down a delivery that was ordered. */
import { civilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { nextCodes } from '../store/index.ts';
import { civilDay, flag, formId, someText } from './fields.ts';
import { findBin } from './find.ts';
import { inOrder, lot } from './lot-fields.ts';
import { action } from './perform.ts';

const FARTHEST_DAYS = 366;

export const expectDelivery = action({
  verb: 'expect-delivery',
  schema: lot.extend({ bin: someText, day: civilDay, demo: flag.default(false), formId }),
  body: async ({ tx, now }, given) => {
    const bin = await findBin(tx, given.bin);
    if (!bin.ok) return bin;
    const ordered = inOrder(given);
    if (!ordered.ok) return ordered;
    const date = civilDate(given.day);
    if (given.day < now.today)
      return err(problem('before-today', `"${date}" has passed; say when it comes.`, 'day'));
    if (given.day > now.today + FARTHEST_DAYS)
      return err(problem('date-out-of-range', `"${date}" is more than a year away.`, 'day'));
    const [code] = await nextCodes(tx, 'D', 1);
    const { species } = bin.value;
    const demo = given.demo || bin.value.demo;
    const row = { ...ordered.value, code: code!, species, bin: given.bin, day: given.day, demo };
    return ok({
      summary: `Expect ${given.heads} ${species} on ${spokenDay(given.day)}`,
      puts: {
        delivery: [{ ...row, state: 'expected', purchase: null, offer: null, packs: null, cents: null }],
      },
      reply: { delivery: code! },
    });
  },
});
