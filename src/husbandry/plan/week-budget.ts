/** What may be spent, week by week from Sunday to Saturday: in this one less what was spent in it already. */
import { weeksAfter } from '../calendar.ts';
import type { Market } from '../orders/index.ts';
import type { Period } from './answer.ts';

/** Most that may be spent in each week from that of the first day of the periods to that of the last; Infinity: no bound. */
export function weekBudget(periods: readonly Period[], { purse, spent = [] }: Market): Float64Array {
  const most = purse.weekMostCents ?? Number.POSITIVE_INFINITY;
  const [first, last] = [periods[0] as Period, periods[periods.length - 1] as Period];
  const gone = spent.reduce(
    (sum, { day, cents }) => sum + (weeksAfter(first.from, day) === 0 ? cents : 0),
    0,
  );
  const weeks = weeksAfter(first.from, last.from + last.days - 1) + 1;
  return Float64Array.from({ length: weeks }, (_, week) => (week === 0 ? Math.max(0, most - gone) : most));
}
