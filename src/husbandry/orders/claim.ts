/** The last hour at which dead prey can be claimed from who sent it. */
import type { DayNumber } from '../calendar.ts';
import { HOURS_PER_DAY, MINUTES_PER_HOUR } from '../units.ts';

export interface ClaimBy {
  readonly day: DayNumber;
  /** 'HH:MM'; null where it is not known when the box came: the day is then the first it may end on. */
  readonly time: string | null;
}

/** So many hours from the door, by the clock of the keeper: a night in which it is put back or on counts as any other. */
export function claimBy(came: DayNumber, time: string | null, claimHours: number): ClaimBy {
  const [hour = 0, minute = 0] = (time ?? '').split(':').map(Number);
  const days = Math.floor((hour + claimHours) / HOURS_PER_DAY);
  if (time === null) return { day: came + days, time: null };
  const ends = (hour + claimHours) % HOURS_PER_DAY;
  return { day: came + days, time: `${twoDigits(ends)}:${twoDigits(minute % MINUTES_PER_HOUR)}` };
}

const twoDigits = (n: number): string => String(n).padStart(2, '0');
