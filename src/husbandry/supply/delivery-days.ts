/** On which days a parcel can come, and by when it must be ordered. */
import { type DayNumber, weekday } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';

/** First day from tomorrow on, the lead time past, on which a delivery can come. */
export function firstDeliveryDay(snapshot: Snapshot, leadTimeDays: number): DayNumber | null {
  const first = snapshot.today + Math.max(1, leadTimeDays);
  const week = snapshot.deliveryWeekdays.length;
  for (let day = first; day < first + week; day++) if (snapshot.deliveryWeekdays[weekday(day)]) return day;
  return null;
}

export interface OrderBy {
  readonly orderBy: DayNumber;
  readonly comes: DayNumber;
}

/** The last order that comes by a day; when that is past, an order of today; null when no parcel ever comes. */
export function orderInTimeFor(snapshot: Snapshot, wanted: DayNumber): OrderBy | null {
  const { today, leadTimeDays, deliveryWeekdays } = snapshot;
  for (let day = wanted; day > wanted - deliveryWeekdays.length; day--) {
    const orderBy = day - leadTimeDays;
    if (deliveryWeekdays[weekday(day)] && orderBy >= today && day > today) return { orderBy, comes: day };
  }
  const first = firstDeliveryDay(snapshot, leadTimeDays);
  return first === null ? null : { orderBy: today, comes: first };
}
