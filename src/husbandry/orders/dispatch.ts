/** When a supplier sends a parcel, by when it must be ordered and when it comes. */
import { type DayNumber, type DayRange, weekday } from '../calendar.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Supplier, WeatherSpell } from './market.ts';

/** One chance to order. */
export interface Dispatch {
  readonly orderBy: DayNumber;
  readonly sent: DayNumber;
  readonly comes: DayNumber;
}

/** Every parcel that can still be ordered on `range.from` or later and is sent by `range.to`, in order; none that the weather would hold. */
export function dispatchesOf(
  supplier: Supplier,
  range: DayRange,
  weather: readonly WeatherSpell[] = [],
): Dispatch[] {
  const found: Dispatch[] = [];
  for (let sent = range.from; sent <= range.to; sent++) {
    const orderBy = sent - supplier.cutOffDays;
    if (orderBy >= range.from && orderBy !== supplier.tooLateOn && isSentOn(supplier, sent, weather))
      found.push({ orderBy, sent, comes: sent + supplier.transitDays });
  }
  return found;
}

/** Whether a parcel leaves on a day: the weekday is one of theirs, no holiday, and the weather lets it. */
export const isSentOn = (
  supplier: Supplier,
  day: DayNumber,
  weather: readonly WeatherSpell[] = [],
): boolean =>
  supplier.dispatchWeekdays[weekday(day)] === true &&
  !supplier.holidays.some((holiday) => within(holiday, day)) &&
  !isHeldOn(supplier, day, weather);

/** Whether a parcel sent on a day would be too cold or too hot on any day of its way, the first and the last among them. */
export const isHeldOn = (
  { coldBelowC, heatAboveC, transitDays }: Supplier,
  day: DayNumber,
  weather: readonly WeatherSpell[],
): boolean =>
  weather.some(
    ({ from, to, tempC }) =>
      from <= day + transitDays &&
      day <= to &&
      ((coldBelowC !== null && tempC < coldBelowC) || (heatAboveC !== null && tempC > heatAboveC)),
  );

/**
 * The day on which a parcel ordered for `sent` leaves: that day, or the first of their days after whatever keeps it;
 * null when that is more than the supplier's `holdDays` later and the order lapses.
 */
export function heldUntil(
  supplier: Supplier,
  sent: DayNumber,
  weather: readonly WeatherSpell[],
): DayNumber | null {
  const last = lastLookedAt(supplier, sent, weather);
  for (let day = sent; day <= last; day++) if (isSentOn(supplier, day, weather)) return day;
  return null;
}

/** A week after every spell and holiday is over each of the supplier's weekdays has come. */
function lastLookedAt(
  { holidays, holdDays }: Supplier,
  sent: DayNumber,
  weather: readonly WeatherSpell[],
): DayNumber {
  const ends = [...holidays, ...weather].map(({ to }) => to);
  const clear = Math.max(sent, ...ends) + DAYS_PER_WEEK;
  return holdDays === null ? clear : Math.min(sent + holdDays, clear);
}

const within = ({ from, to }: DayRange, day: DayNumber): boolean => from <= day && day <= to;
