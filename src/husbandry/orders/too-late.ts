/** The time of day until which suppliers take orders, and for whom it has passed. */
import type { DayNumber } from '../calendar.ts';
import { MINUTES_PER_HOUR } from '../units.ts';
import { isSentOn } from './dispatch.ts';
import type { Supplier } from './market.ts';

/** A day and how many minutes of it have gone. */
export interface TimeOfDay {
  readonly today: DayNumber;
  readonly minutes: number;
}

/** The supplier as it stands at a time: `tooLateOn` is today once its cut-off time is reached. */
export function atTime({ tooLateOn: _, ...supplier }: Supplier, { today, minutes }: TimeOfDay): Supplier {
  const { cutOffTime } = supplier;
  const isPast = cutOffTime !== null && minutes >= minutesOf(cutOffTime);
  return isPast ? { ...supplier, tooLateOn: today } : supplier;
}

/** 'HH:MM' as minutes since midnight. */
function minutesOf(time: string): number {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return hours * MINUTES_PER_HOUR + minutes;
}

/** Codes of the suppliers to whom an order could have gone today, had the hour not passed. */
export const tooLateToday = (suppliers: readonly Supplier[], today: DayNumber): string[] =>
  suppliers
    .filter((supplier) => supplier.tooLateOn === today && isSentOn(supplier, today + supplier.cutOffDays))
    .map(({ code }) => code);
