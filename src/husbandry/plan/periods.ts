/** The stretches of days a plan counts in: weeks that begin on the day parcels come, after what is left until then. */
import type { DayNumber } from '../calendar.ts';
import { dispatchesOf, type Market, type Supplier } from '../orders/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Period } from './answer.ts';

export interface PeriodsAsked {
  readonly today: DayNumber;
  readonly weeks: number;
  readonly market: Market;
}

/** As many periods as weeks, together of as many days, or fewer where the first is short. */
export function periodsOf({ today, weeks, market }: PeriodsAsked): Period[] {
  const first = daysToParcel(today, market);
  return Array.from({ length: weeks }, (_, t) => ({
    from: t === 0 ? today : today + first + (t - 1) * DAYS_PER_WEEK,
    days: t === 0 ? first : DAYS_PER_WEEK,
  }));
}

/** Days until the weekday on which the supplier with most offers can come first; a week where nobody sends parcels. */
function daysToParcel(today: DayNumber, { suppliers, offers, weather }: Market): number {
  const offersOf = ({ code }: Supplier) => offers.filter(({ supplier }) => supplier === code).length;
  const main = suppliers
    .filter(({ kind }) => kind === 'parcel')
    .sort((a, b) => offersOf(b) - offersOf(a) || (a.code < b.code ? -1 : 1))[0];
  const range = { from: today, to: today + DAYS_PER_WEEK * (main?.transitDays ?? 1) + DAYS_PER_WEEK };
  const coming = main ? dispatchesOf(main, range, weather)[0]?.comes : undefined;
  if (coming === undefined) return DAYS_PER_WEEK;
  const rest = (coming - today) % DAYS_PER_WEEK;
  return rest === 0 ? DAYS_PER_WEEK : rest;
}

/** The day by which a period is judged: its middle. */
export const middleOf = ({ from, days }: Period): DayNumber => from + Math.floor((days - 1) / 2);

/** The first period from whose middle on something that is there from a day on can be eaten; -1 beyond the last. */
export const periodFrom = (periods: readonly Period[], day: DayNumber): number =>
  periods.findIndex((period) => day <= middleOf(period));

/** The period a day lies in; -1 outside all. */
export const periodOf = (periods: readonly Period[], day: DayNumber): number =>
  periods.findIndex(({ from, days }) => from <= day && day < from + days);
