/** Turns an instant into the keeper's civil day and evening. */
import { parseCivilDate } from '../husbandry/calendar.ts';
import type { Now } from './context.ts';

/** What is logged before this hour belongs to the evening before. */
const EVENING_ENDS_AT_HOUR = 4;

/** Day, evening and moment of an instant in a time zone (an IANA name). */
export function nowIn(timezone: string, instant: Date): Now {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone: timezone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(instant);
  const part = (type: string): string => parts.find((each) => each.type === type)?.value ?? '';
  const day = parseCivilDate(`${part('year')}-${part('month')}-${part('day')}`);
  if (!day.ok) throw new Error(`No civil day for ${instant.toISOString()} in ${timezone}`);
  const night = Number(part('hour')) < EVENING_ENDS_AT_HOUR;
  return { today: day.value, evening: night ? day.value - 1 : day.value, moment: instant.toISOString() };
}
