/** When a supplier sends a parcel, by when it must be ordered and when it comes. */
import { type DayNumber, type DayRange, weekday } from '../calendar.ts';
import type { Supplier, WeatherSpell } from './market.ts';

/** One chance to order. */
export interface Dispatch {
  readonly orderBy: DayNumber;
  readonly sent: DayNumber;
  readonly comes: DayNumber;
}

/** Every parcel that can still be ordered on `range.from` or later and is sent by `range.to`, in order. */
export function dispatchesOf(
  supplier: Supplier,
  range: DayRange,
  weather: readonly WeatherSpell[] = [],
): Dispatch[] {
  const found: Dispatch[] = [];
  for (let sent = range.from; sent <= range.to; sent++) {
    const orderBy = sent - supplier.cutOffDays;
    if (orderBy >= range.from && isSentOn(supplier, sent, weather))
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

/** Whether it is too cold or too hot outside for this supplier's parcels. */
export const isHeldOn = (
  { coldBelowC, heatAboveC }: Supplier,
  day: DayNumber,
  weather: readonly WeatherSpell[],
): boolean =>
  weather.some(
    (spell) =>
      within(spell, day) &&
      ((coldBelowC !== null && spell.tempC < coldBelowC) ||
        (heatAboveC !== null && spell.tempC > heatAboveC)),
  );

const within = ({ from, to }: DayRange, day: DayNumber): boolean => from <= day && day <= to;
