/** Civil days without clock times: days are counted from 1970-01-01 and never made of hours. */

import { problem } from './problems.ts';
import { err, ok, type Result } from './result.ts';
import { DAYS_PER_WEEK, HOURS_PER_DAY } from './units.ts';

/** Whole days since 1970-01-01 in the civil (proleptic Gregorian) calendar. */
export type DayNumber = number;
/** ISO 8601 calendar date, 'YYYY-MM-DD'. */
export type CivilDate = string;

/** Days before today, in arrays of days, that stand for "no day on record". */
export const NEVER = -32768;

const MS_PER_DAY = HOURS_PER_DAY * 60 * 60 * 1000;
const THURSDAY = 3; // 1970-01-01 was a Thursday, counted from Monday = 0
const SUNDAY = 6;

/** The civil date of a day number, as YYYY-MM-DD. */
export const civilDate = (day: DayNumber): CivilDate => new Date(day * MS_PER_DAY).toISOString().slice(0, 10);

/** Day number of year, month (1-12) and day of month, or a Problem when there is no such day. */
export function dayOf(year: number, month: number, dayOfMonth: number): Result<DayNumber> {
  const day = Math.round(Date.UTC(year, month - 1, dayOfMonth) / MS_PER_DAY);
  const iso = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
  return civilDate(day) === iso
    ? ok(day)
    : err(problem('no-such-day', `There is no day ${iso} in the calendar.`));
}

/** Reads 'YYYY-MM-DD'. */
export function parseCivilDate(text: string): Result<DayNumber> {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (!match)
    return err(
      problem(
        'not-a-date',
        text === ''
          ? 'Give a date, such as 2026-03-21.'
          : `"${text}" is not a date; write it like 2026-03-21.`,
      ),
    );
  return dayOf(Number(match[1]), Number(match[2]), Number(match[3]));
}

/** Day of the week, Monday 0 to Sunday 6. */
export const weekday = (day: DayNumber): number =>
  (((day + THURSDAY) % DAYS_PER_WEEK) + DAYS_PER_WEEK) % DAYS_PER_WEEK;

/** The first Sunday after a day. */
export const nextSunday = (day: DayNumber): DayNumber =>
  day + ((SUNDAY - weekday(day) + DAYS_PER_WEEK - 1) % DAYS_PER_WEEK) + 1;

/** Weeks after that of a day, Sunday to Saturday; 0 in the same. */
export const weeksAfter = (day: DayNumber, later: DayNumber): number =>
  (nextSunday(later) - nextSunday(day)) / DAYS_PER_WEEK;

/** A stretch of civil days, both ends included. */
export interface DayRange {
  readonly from: DayNumber;
  readonly to: DayNumber;
}

/** When this keeper feeds: seven weekdays from Monday, and stretches away from home. */
export interface FeedingCalendar {
  readonly feedingWeekdays: readonly boolean[];
  readonly absences: readonly DayRange[];
}

/** Whether the keeper means to feed on this day. */
export const isFeedingDay = (calendar: FeedingCalendar, day: DayNumber): boolean =>
  calendar.feedingWeekdays[weekday(day)] === true &&
  !calendar.absences.some((absence) => absence.from <= day && day <= absence.to);
