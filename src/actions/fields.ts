/** Fields of what the keeper enters: each reads text or a number and says in a sentence what would be right. */
import { z } from 'zod';
import { civilDate, type DayNumber, parseCivilDate } from '../husbandry/calendar.ts';
import type { Mm } from '../husbandry/units.ts';

const LONGEST_ANIMAL_MM = 600;
const LONGEST_PREY_MM = 150;
const MOST_HEADS = 1_000_000;
const HEAVIEST_MG = 1_000_000_000;
const WARMEST_C = 45;
const COLDEST_C = 0;
const LONGEST_TEXT = 200;
const LONGEST_NOTES = 4000;
/** A page's own id and the name of a shelf. */
const LONGEST_FORM_ID = 600;
const EARLIEST_DATE = '1990-01-01';
const LATEST_DATE = '2100-01-01';

type Raw = string | number;
const raw = z.union([z.string(), z.number()], { error: 'This is needed.' });

interface Bounds {
  readonly code: string;
  readonly least: number;
  readonly most: number;
  /** What would be right, such as 'a length in millimetres, such as 35'. */
  readonly wanted: string;
  readonly whole?: boolean;
}

/** A unit written after a number, and the comma of half the world. */
const UNIT_AFTER = /\s*(%|percent|days?|weeks?|minutes?|items?|portions?|mm)$/i;
const plainNumber = (text: string): number => {
  const bare = text.trim().replace(UNIT_AFTER, '').replace(',', '.');
  return bare === '' ? Number.NaN : Number(bare);
};

const isWithin = ({ least, most, whole = false }: Bounds, value: number): boolean =>
  value >= least && value <= most && (!whole || Number.isInteger(value));

/** A number within bounds, given as a number or as text: '40', '12,5', '7 days'. */
export const figureWithin = (bounds: Bounds) =>
  raw.transform((given: Raw, context): number => {
    const value = typeof given === 'number' ? given : plainNumber(given);
    if (isWithin(bounds, value)) return value;
    const message = `"${given}" is not ${bounds.wanted}.`;
    context.addIssue({ code: 'custom', params: { code: bounds.code }, message });
    return z.NEVER;
  });

/** The same, or null where it is left empty. */
export const figureOrNone = (bounds: Bounds) =>
  z.union([raw, z.null()]).transform((given, context): number | null => {
    if (given === null || `${given}`.trim() === '') return null;
    const read = figureWithin(bounds).safeParse(given);
    if (read.success) return read.data;
    const message = read.error.issues[0]?.message ?? '';
    context.addIssue({ code: 'custom', params: { code: bounds.code }, message });
    return z.NEVER;
  });

/** A number within bounds, given as a number or as text. */
const numberWithin = ({ code, least, most, wanted, whole = false }: Bounds) =>
  raw.transform((given: Raw, context): number => {
    const value = typeof given === 'number' ? given : Number(given.trim() === '' ? Number.NaN : given);
    if (value >= least && value <= most && (!whole || Number.isInteger(value))) return value;
    context.addIssue({ code: 'custom', params: { code }, message: `"${given}" is not ${wanted}.` });
    return z.NEVER;
  });

const length = (least: Mm, most: Mm) =>
  numberWithin({
    code: 'size-out-of-range',
    least,
    most,
    wanted: `a size from ${least} to ${most} mm; write it in millimetres, such as 12`,
  });

export const gaugeMm = length(0.5, LONGEST_ANIMAL_MM);
export const preyMm = length(0.2, LONGEST_PREY_MM);
const whole = (least: number, most: number) =>
  numberWithin({
    code: 'number-out-of-range',
    least,
    most,
    wanted: `a whole number from ${least} to ${most.toLocaleString('en-GB')}`,
    whole: true,
  });
export const heads = whole(1, MOST_HEADS);
export const headsOrNone = whole(0, MOST_HEADS);
export const position = whole(0, MOST_HEADS);
export const portions = whole(1, 20);
export const leadDays = whole(0, 60);
/** Weeks a plan looks ahead. */
export const planWeeks = whole(4, 26);
export const asOf = whole(0, Number.MAX_SAFE_INTEGER).optional();
export const actNumber = whole(1, Number.MAX_SAFE_INTEGER);
export const massMg = numberWithin({
  code: 'mass-out-of-range',
  least: 0,
  most: HEAVIEST_MG,
  wanted: 'a mass in milligrams, such as 25000 for 25 g',
});
export const tempC = numberWithin({
  code: 'temperature-out-of-range',
  least: COLDEST_C,
  most: WARMEST_C,
  wanted: `a room's temperature from ${COLDEST_C} to ${WARMEST_C} degrees Celsius, such as 24`,
});
export const chance = numberWithin({
  code: 'chance-out-of-range',
  least: 0,
  most: 1,
  wanted: 'a chance from 0 to 1, such as 0.7',
});

/** A civil date written as 2026-03-21. */
export const civilDay = z
  .string({ error: 'Give a date as 2026-03-21.' })
  .transform((text, context): DayNumber => {
    const day = parseCivilDate(text);
    const refuse = (code: string, message: string): never => {
      context.addIssue({ code: 'custom', params: { code }, message });
      return z.NEVER;
    };
    if (!day.ok) return refuse(day.problem.code, day.problem.sentence);
    const date = civilDate(day.value);
    return date >= EARLIEST_DATE && date <= LATEST_DATE
      ? day.value
      : refuse('date-out-of-range', `"${text}" is too far away; give a date from ${EARLIEST_DATE} on.`);
  });

const textUpTo = (most: number) =>
  z
    .string({ error: 'Write some text.' })
    .trim()
    .max(most, { error: `Write at most ${most} characters.` });
export const text = textUpTo(LONGEST_TEXT);
export const longText = textUpTo(LONGEST_NOTES);
export const someText = text.min(1, { error: 'This is needed.' });

/** A box that is ticked, as a form or a program says it. */
export const flag = z
  .union([z.boolean(), z.enum(['on', 'true', 'false', ''])])
  .transform((given) => (typeof given === 'boolean' ? given : given === 'on' || given === 'true'));

const DAYS_OF_WEEK = 7;
/** Seven weekdays from Monday, ticked or not. */
export const sevenDays = z
  .array(flag)
  .length(DAYS_OF_WEEK, { error: 'Seven weekdays are needed, from Monday to Sunday.' });

const TIME = /^([01]?\d|2[0-3])(?:[:.]([0-5]\d))?$/;
/** A time of day as 'HH:MM', or null where it is left empty. */
export const timeOfDay = z.union([z.string(), z.null()]).transform((given, context): string | null => {
  if (given === null || given.trim() === '') return null;
  const [, hour, minutes = '00'] = TIME.exec(given.trim()) ?? [];
  if (hour !== undefined) return `${hour.padStart(2, '0')}:${minutes}`;
  const message = `"${given}" is not a time of day; write it as 09:00 or 14:30.`;
  context.addIssue({ code: 'custom', params: { code: 'not-a-time' }, message });
  return z.NEVER;
});

/** One of a few words. */
export const oneOf = <const W extends readonly [string, ...string[]]>(words: W) =>
  z.enum(words, {
    error: ({ input }) => `"${String(input ?? '')}" is not one of: ${words.join(', ')}.`,
  });

/** Names one sending of a form, so that the same sending twice has one effect. */
export const formId = z.string().min(1).max(LONGEST_FORM_ID).optional();
