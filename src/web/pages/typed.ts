/** Fields of forms as they are typed: each keeps its text or says in a sentence what would be right. */

import { z } from 'zod';
import type { LengthUnit } from '../../../views/format.ts';
import { asOf, civilDay } from '../../actions/fields.ts';
import { civilDate, type DayNumber } from '../../husbandry/calendar.ts';
import type { Space } from '../../husbandry/larder/index.ts';
import type { Problem } from '../../husbandry/problems.ts';
import { ok, type Result } from '../../husbandry/result.ts';
import { type Mm, PERCENT } from '../../husbandry/units.ts';
import { OUTDOORS, readLength, readMass, readSpace, readTemperature } from '../../intake/index.ts';

const text = z.string({ error: 'This is needed.' }).trim();

/** Text that must be there. */
export const needed = text.min(1, { error: 'This is needed.' });
/** Text that may be left empty. */
export const anyText = z.string().trim().default('');
/** Left empty counts as not said. */
export const maybeText = z
  .string()
  .trim()
  .optional()
  .transform((typed) => (typed === '' ? undefined : typed));

type Refuse = (typed: string) => string | null;

const check = (refuse: Refuse) => (typed: string, context: z.RefinementCtx) => {
  const sentence = typed === '' ? null : refuse(typed);
  if (sentence !== null) context.addIssue({ code: 'custom', message: sentence });
};

/** What an action's field says of the text; it will read the same text again. */
const saidBy =
  (field: z.ZodType): Refuse =>
  (typed) => {
    const read = field.safeParse(typed);
    return read.success ? null : (read.error.issues[0]?.message ?? 'This cannot be read.');
  };

/** Text that a field of an action takes. */
export const typed = (field: z.ZodType) =>
  needed.superRefine(check(saidBy(field))).meta({ isDay: field === civilDay });
/** The same, where an empty text says something too. */
export const typedOrEmpty = (field: z.ZodType) => anyText.superRefine(check(saidBy(field)));
/** The same, or left empty. */
export const maybe = (field: z.ZodType) =>
  z
    .string()
    .trim()
    .optional()
    .superRefine((given, context) => check(saidBy(field))(given ?? '', context))
    .transform((given) => (given === '' ? undefined : given))
    .meta({ isDay: field === civilDay });

/** The revision a page was made from; a page that does not say is not checked against newer changes. */
export const revision = maybe(asOf).transform((given) => (given === undefined ? undefined : Number(given)));

const DAYS_AGO: Readonly<Record<string, number>> = { today: 0, yesterday: 1 };

/** Fields as they were sent, with 'today' and 'yesterday' as the days they mean where a day is read. */
export function daysSaid(
  given: Readonly<Record<string, unknown>>,
  shape: z.ZodRawShape,
  today: DayNumber,
): Readonly<Record<string, unknown>> {
  const read = Object.entries(given).map(([name, value]) => {
    const isDay = (shape[name] as z.ZodType | undefined)?.meta()?.isDay === true;
    const ago = isDay && typeof value === 'string' ? DAYS_AGO[value.trim().toLowerCase()] : undefined;
    return [name, ago === undefined ? value : civilDate(today - ago)];
  });
  return Object.fromEntries(read);
}

/** A text read into a number by a reader of keepers' own ways of writing. */
const readAs = (read: (typed: string) => Result<number>) =>
  needed.transform((given, context): number => {
    const found = read(given);
    if (found.ok) return found.value;
    context.addIssue({ code: 'custom', message: sentenceOf(found.problem) });
    return z.NEVER;
  });

/** The size of a bin as typed, or null where nothing was. */
export const space = anyText.transform((given, context): Space | null => {
  const found = given === '' ? ok(null) : readSpace(given);
  if (found.ok) return found.value;
  context.addIssue({ code: 'custom', message: sentenceOf(found.problem) });
  return z.NEVER;
});

/** The same, or left empty. */
const maybeAs = (read: (typed: string) => Result<number>) =>
  anyText.transform((given, context): number | undefined => {
    if (given === '') return undefined;
    const found = read(given);
    if (found.ok) return found.value;
    context.addIssue({ code: 'custom', message: sentenceOf(found.problem) });
    return z.NEVER;
  });

const sentenceOf = ({ sentence }: Problem): string => sentence;

/** One length in the keeper's own units; a bare number is in the unit of the pages. */
export const readMm =
  (unit: LengthUnit) =>
  (given: string): Result<Mm> => {
    const read = readLength(given, unit);
    return read.ok ? { ok: true, value: read.value.mm } : read;
  };

export const length = (unit: LengthUnit) => readAs(readMm(unit));
const noLength =
  (unit: LengthUnit): Refuse =>
  (given) => {
    const read = readMm(unit)(given);
    return read.ok ? null : read.problem.sentence;
  };
/** The same as text: for a size that is compared with what was shown. */
export const lengthTyped = (unit: LengthUnit) => needed.superRefine(check(noLength(unit)));
/** The same, or left empty. */
export const maybeLengthText = (unit: LengthUnit) => anyText.superRefine(check(noLength(unit)));
/** A length, or left empty. */
export const maybeLength = (unit: LengthUnit) => maybeAs(readMm(unit));
export const mass = readAs(readMass);
export const maybeMass = maybeAs(readMass);
/** Who writes millimetres writes Celsius; who writes inches must say which. */
export const temperature = (unit: LengthUnit) =>
  readAs((given) => readTemperature(given, unit === 'mm' ? 'C' : null));
/** The same, or left empty. */
export const maybeTemperature = (unit: LengthUnit) =>
  maybeAs((given) => readTemperature(given, unit === 'mm' ? 'C' : null));
const readOutside = (unit: LengthUnit) => (given: string) =>
  readTemperature(given, unit === 'mm' ? 'C' : null, OUTDOORS);
/** Degrees outside, where it may freeze. */
export const outside = (unit: LengthUnit) => readAs(readOutside(unit));
/** The same, or left empty. */
export const maybeOutside = (unit: LengthUnit) => maybeAs(readOutside(unit));
const WEEKDAYS = ['0', '1', '2', '3', '4', '5', '6'] as const;
/** Days of the week that are ticked, Monday first: one answer for each day. */
export const weekdays = z
  .array(z.enum(WEEKDAYS, { error: 'Choose among the days of the week.' }))
  .default([])
  .transform((chosen): boolean[] => WEEKDAYS.map((day) => chosen.includes(day)));
/** A box that is ticked or absent. */
export const ticked = z
  .literal('on')
  .optional()
  .transform((given) => given === 'on');

/** A percentage as a share from 0 to 1; left empty counts as not said. */
export const percent = z
  .string()
  .trim()
  .default('')
  .transform((given, context): number | undefined => {
    if (given === '') return undefined;
    const share = Number(given) / PERCENT;
    if (share >= 0 && share <= 1) return share;
    context.addIssue({ code: 'custom', message: `"${given}" is not a percentage from 0 to 100.` });
    return z.NEVER;
  });
