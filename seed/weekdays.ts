/** Weekdays told from the day the demo is made on, so that it is the same on every day of the week. */
import { type DayNumber, weekday } from '../src/husbandry/calendar.ts';
import { DAYS_PER_WEEK } from '../src/husbandry/units.ts';

/** Seven weekdays from Monday, those marked that lie so many days ahead. */
export function weekdaysOf(today: DayNumber, daysAhead: readonly number[]): boolean[] {
  const marked = daysAhead.map((ahead) => weekday(today + ahead));
  return Array.from({ length: DAYS_PER_WEEK }, (_, day) => marked.includes(day));
}
