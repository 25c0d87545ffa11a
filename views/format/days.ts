/** How days are written. */
import { type DayNumber, weekday } from '../../src/husbandry/calendar.ts';
import { DAYS_PER_WEEK, DAYS_PER_YEAR } from '../../src/husbandry/units.ts';
import { counted } from './amounts.ts';

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

const EARLY_TO = 10;
const MID_TO = 20;

/** 'early March', 'mid March', 'late March'. */
export function partOfMonth(day: DayNumber): string {
  const { date, month } = parts(day);
  return `${date <= EARLY_TO ? 'early' : date <= MID_TO ? 'mid' : 'late'} ${month}`;
}

const IN_DAYS_BELOW = 11;
const IN_WEEKS_BELOW = 63;
const DAYS_A_MONTH = DAYS_PER_YEAR / MONTHS.length;

/** '5 days', '3 weeks', '4 months'. */
export function spell(days: number): string {
  if (days < IN_DAYS_BELOW) return counted(Math.max(1, Math.round(days)), 'day');
  if (days < IN_WEEKS_BELOW) return counted(Math.round(days / DAYS_PER_WEEK), 'week');
  return counted(Math.round(days / DAYS_A_MONTH), 'month');
}
