/** Keeps a bin apart, or leaves it alone so that it grows and breeds undisturbed, for some days; or ends it. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import type { BinRow } from '../store/index.ts';
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

interface KeptUntil<Verb extends string> {
  readonly verb: Verb;
  readonly field: 'quarantineUntil' | 'restsUntil';
  /** What was done: to this day, written out; null: it ended. */
  readonly summary: (bin: BinRow, until: string | null) => string;
}

const keptUntil = <const Verb extends string>({ verb, field, summary }: KeptUntil<Verb>) =>
  action({
    verb,
    /** 0 days end it. */
    schema: z.strictObject({ bin: someText, days, formId }),
    body: async ({ tx, now }, given) => {
      const found = await findBin(tx, given.bin);
      if (!found.ok) return found;
      const bin = found.value;
      const until = given.days === 0 ? null : now.today + given.days;
      return ok({
        summary: summary(bin, until === null ? null : spokenDay(until)),
        puts: { bin: [{ ...bin, [field]: until }] },
        reply: { bin: bin.code },
      });
    },
  });

export const quarantine = keptUntil({
  verb: 'quarantine',
  field: 'quarantineUntil',
  summary: ({ code }, until) =>
    until === null ? `Ended the quarantine of ${code}` : `Kept ${code} apart until ${until}`,
});

export const restBin = keptUntil({
  verb: 'rest-bin',
  field: 'restsUntil',
  summary: ({ code }, until) =>
    until === null ? `Fed from ${code} again` : `Left ${code} alone until ${until}`,
});
