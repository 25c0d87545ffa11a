/** Whether an order can have come on a day: a parcel that travels comes after the day it is sent, all else on that day. */
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import type { PlacedOrder } from './find-order.ts';

/** Null where it can have come. */
export function cameTooEarly({ purchase, supplier }: PlacedOrder, day: DayNumber): Problem | null {
  const isShop = supplier.kind === 'shop';
  const { sentDay } = purchase;
  const travels = !isShop && purchase.dueDay > sentDay;
  if (travels ? day > sentDay : day >= sentDay) return null;
  const leaves = isShop
    ? `it is fetched from “${supplier.name}” on ${spokenDay(sentDay)}`
    : `the parcel from “${supplier.name}” leaves on ${spokenDay(sentDay)}`;
  return problem(
    'before-sent',
    `"${civilDate(day)}" is too early: ${leaves}. Where it was sooner, cancel the order and write it down anew.`,
    'day',
  );
}
