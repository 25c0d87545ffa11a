/** How days, lengths, counts and chances are written for a keeper. */

export { fewOf, listed, sentenceCase } from '../src/husbandry/words.ts';

import { type DayNumber, weekday } from '../src/husbandry/calendar.ts';
import type { Spread } from '../src/husbandry/supply/index.ts';
import { MM_PER_INCH, type Mm, PERCENT } from '../src/husbandry/units.ts';

export type LengthUnit = 'mm' | 'in';
/** How certain a sentence sounds: a chance's half-width is 1.96 standard errors. */
const HALF_WIDTH = 1.96;
const MS_PER_DAY = 86_400_000;

export const WEEKDAYS = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;
/** The days of the week as a form offers them: '0' is Monday. */
export const DAY_OPTIONS = WEEKDAYS.map((day, i) => ({ value: `${i}`, label: day.slice(0, 3) }));
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** The day's name, date, month and year. */
export function parts(day: DayNumber): { name: string; date: number; month: string; year: number } {
  const moment = new Date(day * MS_PER_DAY);
  return {
    name: WEEKDAYS[weekday(day)] ?? '',
    date: moment.getUTCDate(),
    month: MONTHS[moment.getUTCMonth()] ?? '',
    year: moment.getUTCFullYear(),
  };
}

/** 'Thu 27 Nov'. */
export function shortDay(day: DayNumber): string {
  const { name, date, month } = parts(day);
  return `${name.slice(0, 3)} ${date} ${month.slice(0, 3)}`;
}

/** 'Thursday 27 November'. */
export function longDay(day: DayNumber): string {
  const { name, date, month } = parts(day);
  return `${name} ${date} ${month}`;
}

/** 2026, of a day that goes on paper. */
export const yearOf = (day: DayNumber): number => parts(day).year;
/** '3 March 2026'. */
export function writtenDay(day: DayNumber): string {
  const { date, month, year } = parts(day);
  return `${date} ${month} ${year}`;
}

/** 'Thursday 5 March 2026'. */
export const fullDay = (day: DayNumber): string => `${parts(day).name} ${writtenDay(day)}`;

/** '27 Nov 2026', for records that may be years old. */
export function recordDay(day: DayNumber): string {
  const { date, month, year } = parts(day);
  return `${date} ${month.slice(0, 3)} ${year}`;
}

/** 'Thu 27 Nov', or 'Tue 25 Nov to Thu 27 Nov'. */
export const dayRange = (from: DayNumber, to: DayNumber): string =>
  from === to ? shortDay(from) : `${shortDay(from)} to ${shortDay(to)}`;

/** 'today', 'yesterday', '5 days ago'. */
export function ago(days: number): string {
  if (days <= 0) return 'today';
  return days === 1 ? 'yesterday' : `${days} days ago`;
}

/** '1 meal', '3 meals', '2 spiderlings'; another plural may be given. */
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** '7 days', '3 to 7 days'. */
export const span = ([least, most]: readonly [number, number], unit: string): string =>
  least === most ? `${least} ${unit}` : `${least} to ${most} ${unit}`;

const SIXTEENTHS = 16;

/** Inches to the sixteenth, as keepers write them: '3/4', '1 1/2'. */
export function inches(mm: Mm): string {
  const sixteenths = Math.max(1, Math.round((mm / MM_PER_INCH) * SIXTEENTHS));
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  let top = sixteenths % SIXTEENTHS;
  let bottom = SIXTEENTHS;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return `${whole}`;
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

const DECIMALS_BELOW_MM = 5;

/** A number of millimetres: a decimal only below 5 mm. */
const millimetres = (mm: Mm): string => `${mm < DECIMALS_BELOW_MM ? Math.round(mm * 2) / 2 : Math.round(mm)}`;

const bareLength = (mm: Mm, unit: LengthUnit): string => (unit === 'mm' ? millimetres(mm) : inches(mm));

/** '12 mm' or '1/2 in'. */
export const lengthText = (mm: Mm, unit: LengthUnit): string => `${bareLength(mm, unit)} ${unit}`;

/** '2–4 mm'; one length when both ends are written alike. */
export function lengthRange(fromMm: Mm, toMm: Mm, unit: LengthUnit): string {
  const [from, to] = [bareLength(fromMm, unit), bareLength(toMm, unit)];
  return from === to ? `${from} ${unit}` : `${from}–${to} ${unit}`;
}

const VAGUE_SHARE = 0.1;
const WHOLE_BELOW = 20;
const FIVES_BELOW = 100;

/** No more figures than a guess has: whole below 20, fives below 100, then two figures. */
export function roundly(n: number): number {
  if (n < WHOLE_BELOW) return Math.round(n);
  const step = n < FIVES_BELOW ? 5 : 10 ** (Math.floor(Math.log10(n)) - 1);
  return Math.round(n / step) * step;
}

const GUESS_TIMES = 5;

/** Whether a count is so old that its band says more than its middle. */
export const isGuess = ({ low, high }: Spread): boolean => high > GUESS_TIMES * Math.max(1, low);

/** '120' when somebody has just counted, 'about 340' when the count is vague, '30 to 1300' when it is a guess. */
export function aboutHeads({ low, mid, high }: Spread): string {
  if (high < 1) return 'none';
  if (isGuess({ low, mid, high })) return `${roundly(low)} to ${roundly(high)}`;
  const vague = high - low > Math.max(1, mid * VAGUE_SHARE);
  return vague ? `about ${roundly(mid)}` : `${Math.round(mid)}`;
}

/** An expected number: 'none', 'under 1', 'about 6'. */
export function expected(n: number): string {
  if (n < EXPECTED_NONE) return 'none';
  return n < 1 ? 'under 1' : `about ${roundly(n)}`;
}
const EXPECTED_NONE = 0.005;

const FREQUENCIES: readonly (readonly [number, number])[] = [
  [1, 20],
  [1, 10],
  [1, 5],
  [1, 4],
  [1, 3],
  [2, 5],
  [1, 2],
  [3, 5],
  [2, 3],
  [3, 4],
  [4, 5],
  [9, 10],
  [19, 20],
];
const NEARLY_NEVER = 0.03;
const NEARLY_EVERY = 0.97;

/** A chance as a frequency: 'about 4 weeks in 5'; never none and never all. */
export function weeksIn(chance: number): string {
  if (chance > NEARLY_EVERY) return 'more than 19 weeks in 20';
  if (chance < NEARLY_NEVER) return 'fewer than 1 week in 20';
  const distance = ([n, of]: readonly [number, number]) => Math.abs(n / of - chance);
  const [n, of] = FREQUENCIES.reduce((best, next) => (distance(next) < distance(best) ? next : best));
  return `about ${counted(n, 'week')} in ${of}`;
}

/** '83 %', 'under 1 %', 'over 99 %'. */
export function percent(chance: number): string {
  const whole = Math.round(chance * PERCENT);
  if (whole < 1) return 'under 1 %';
  return whole >= PERCENT ? 'over 99 %' : `${whole} %`;
}

/** What chance alone may add to a percentage, in points: 'give or take 3'. */
export const giveOrTake = (standardError: number): string =>
  `give or take ${Math.max(1, Math.ceil(standardError * HALF_WIDTH * PERCENT))}`;

/** 'an adult', 'a spiderling'. */
export const oneOf = (noun: string): string => `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
