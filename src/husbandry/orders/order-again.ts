/** Whether another order comes before somebody runs out: of the same supplier, else of whoever is soonest. */
import type { DayNumber } from '../calendar.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { type Dispatch, dispatchesOf } from './dispatch.ts';
import type { Market, Supplier } from './market.ts';

export interface Again {
  readonly supplier: Supplier;
  readonly next: Dispatch;
  /** It comes before the day wanted. */
  readonly inTime: boolean;
}

interface Wanted {
  /** Code of the supplier whose box fell short. */
  readonly supplier: string;
  /** Species that would help. */
  readonly species: ReadonlySet<string>;
  readonly today: DayNumber;
  /** Day by which it must be here. */
  readonly before: DayNumber;
}

/** The next parcel of the same supplier, and where that is too late the soonest of another who sells such prey. */
export function orderAgain(market: Market, wanted: Wanted): Again[] {
  const own = market.suppliers.filter(({ code }) => code === wanted.supplier).flatMap(nextOf);
  if (own.some(({ inTime }) => inTime)) return own;
  const sells = ({ code }: Supplier) =>
    market.offers.some(({ supplier, species }) => supplier === code && wanted.species.has(species));
  const others = market.suppliers
    .filter((supplier) => supplier.code !== wanted.supplier && sells(supplier))
    .flatMap(nextOf)
    .sort((a, b) => a.next.comes - b.next.comes || (a.supplier.code < b.supplier.code ? -1 : 1));
  return [...own, ...others.slice(0, 1)];

  function nextOf(supplier: Supplier): Again[] {
    const to = wanted.today + supplier.cutOffDays + 2 * DAYS_PER_WEEK;
    const [next] = dispatchesOf(supplier, { from: wanted.today, to }, market.weather);
    return next === undefined ? [] : [{ supplier, next, inTime: next.comes < wanted.before }];
  }
}
