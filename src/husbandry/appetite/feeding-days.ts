/** Days of the horizon on which the keeper means to feed, laid out for quick look-up. */
import { type DayNumber, type FeedingCalendar, isFeedingDay } from '../calendar.ts';

export interface FeedingDays {
  /** Number of days laid out, from today on. */
  readonly days: number;
  /** First feeding day at or after each day; `days` when there is none. */
  readonly next: Int32Array;
  /** Last feeding day at or before each day; -1 when there is none. */
  readonly previous: Int32Array;
}

/** Lays out the calendar from a day on. */
export function feedingDaysFrom(calendar: FeedingCalendar, today: DayNumber, days: number): FeedingDays {
  const next = new Int32Array(days + 1).fill(days);
  const previous = new Int32Array(days + 1).fill(-1);
  for (let d = days - 1; d >= 0; d--)
    next[d] = isFeedingDay(calendar, today + d) ? d : (next[d + 1] as number);
  for (let d = 0; d < days; d++) previous[d] = next[d] === d ? d : d > 0 ? (previous[d - 1] as number) : -1;
  previous[days] = days > 0 ? (previous[days - 1] as number) : -1;
  return { days, next, previous };
}

/**
 * The day on which a meal drawn for day `drawn` of the range [from, to] is offered: the feeding day inside the range
 * nearest to it (the earlier of two), else the first after the range; `days` or later when it lies beyond the horizon.
 */
export function offeredOn(feeding: FeedingDays, range: { from: number; to: number; drawn: number }): number {
  const { days, next, previous } = feeding;
  if (range.drawn >= days) return days;
  const at = Math.max(0, range.drawn);
  const after = next[at] as number;
  const before = previous[at] as number;
  const beforeFits = before >= Math.max(0, range.from);
  return beforeFits && (after > range.to || at - before <= after - at) ? before : after;
}
