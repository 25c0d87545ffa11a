/** Keeps a bin apart for some days, or ends it. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { figureWithin, formId, someText } from './fields.ts';
import { findBin } from './find.ts';
import { action } from './perform.ts';

const LONGEST_DAYS = 365;
const days = figureWithin({
  code: 'days-out-of-range',
  least: 0,
  most: LONGEST_DAYS,
  wanted: `a whole number of days from 0 to ${LONGEST_DAYS}`,
  whole: true,
});

export const quarantine = action({
  verb: 'quarantine',
  /** 0 days end it. */
  schema: z.strictObject({ bin: someText, days, formId }),
  body: async ({ tx, now }, given) => {
    const bin = await findBin(tx, given.bin);
    if (!bin.ok) return bin;
    const until = given.days === 0 ? null : now.today + given.days;
    const { code } = bin.value;
    return ok({
      summary:
        until === null ? `Ended the quarantine of ${code}` : `Kept ${code} apart until ${spokenDay(until)}`,
      puts: { bin: [{ ...bin.value, quarantineUntil: until }] },
      reply: { bin: code },
    });
  },
});
