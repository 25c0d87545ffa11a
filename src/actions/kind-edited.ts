/** A kind's own figures changed: what it is called besides, how it is measured, how large and heavy it is. */

import { z } from 'zod';
import { kindWith } from '../facts/own/kind-with.ts';
import { type ChangedKind, type KindValues, kindValues } from '../husbandry/animals/index.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { PERCENT } from '../husbandry/units.ts';
import { asOf, figureWithin, formId, gaugeMm, someText, text } from './fields.ts';
import { bookKind, differences } from './own-values.ts';
import { whyNotSizes } from './rule-bounds.ts';
import type { Desk } from './rule-edited.ts';

const ratio = figureWithin({
  code: 'share-out-of-range',
  least: 5,
  most: 150,
  wanted: 'a share of the measure from 5 to 150 %; write it in percent, such as 40',
});
const mass = figureWithin({
  code: 'mass-out-of-range',
  least: 0.0001,
  most: 2,
  wanted: 'a mass from 0.0001 to 2 mg for a body one millimetre long',
});

/** Every figure of a kind as a whole, by the name of its field. */
export const kindFigures = {
  /** Other names, parted by commas. */
  aliases: z.string().trim().max(1000, { error: 'Write at most 1000 characters.' }).optional(),
  gauge: someText.optional(),
  bodyPerGauge: ratio.optional(),
  bodyPerGaugeMale: ratio.optional(),
  massPerCubicMm: mass.optional(),
  adultLeast: gaugeMm.optional(),
  adultMost: gaugeMm.optional(),
  firstLeast: gaugeMm.optional(),
  firstMost: gaugeMm.optional(),
};

export const kindEdit = z.strictObject({
  kind: someText,
  ...kindFigures,
  why: text.default(''),
  asOf,
  formId,
});
type Given = z.output<typeof kindEdit>;

const listed = (names: string): readonly string[] =>
  [...new Set(names.split(/[,;\n]/).map((name) => name.trim().toLowerCase()))].filter((name) => name !== '');

const part = (percent: number | undefined, now: number): number =>
  percent === undefined ? now : percent / PERCENT;

const valuesWith = (now: KindValues, given: Given): KindValues => ({
  ...now,
  aliases: given.aliases === undefined ? now.aliases : listed(given.aliases),
  gauge: given.gauge ?? now.gauge,
  bodyPerGauge: part(given.bodyPerGauge, now.bodyPerGauge),
  bodyPerGaugeMale: now.bodyPerGaugeMale && part(given.bodyPerGaugeMale, now.bodyPerGaugeMale),
  massPerCubicMm: given.massPerCubicMm ?? now.massPerCubicMm,
  adultGaugeMm: [given.adultLeast ?? now.adultGaugeMm[0], given.adultMost ?? now.adultGaugeMm[1]],
  firstFeedingGaugeMm: [
    given.firstLeast ?? now.firstFeedingGaugeMm[0],
    given.firstMost ?? now.firstFeedingGaugeMm[1],
  ],
});

/** The row with other values for the kind as a whole. */
export function kindValued(
  wanted: (now: KindValues) => KindValues,
  { book, row, now, why }: Desk & { readonly why: string },
): Result<ChangedKind> {
  const base = bookKind(book, row);
  if (!base.ok) return base;
  const values = wanted(kindValues(kindWith(base.value, row)));
  const both = { book: kindValues(base.value), own: row.changes.kind };
  const own = differences(both, values, { day: now.today, why });
  const after = { ...row, changes: { ...row.changes, kind: own } };
  const wrong = whyNotSizes(kindWith(base.value, after));
  return wrong === null ? ok(after) : err(wrong);
}

/** The row as it would stand; a Problem where the figures cannot be. */
export const kindEdited = (given: Given, desk: Desk): Result<ChangedKind> =>
  kindValued((now) => valuesWith(now, given), { ...desk, why: given.why });
