/** The keeper's room as it stood on an earlier day: the same store and facts under a clock set back. */
import type { Context } from '../src/actions/index.ts';
import { civilDate, type DayNumber } from '../src/husbandry/calendar.ts';

/** A context in which it is the evening of that day. */
export const asOf = (context: Context, day: DayNumber): Context => ({
  ...context,
  clock: () => ({ today: day, moment: `${civilDate(day)}T19:00:00.000Z` }),
});
