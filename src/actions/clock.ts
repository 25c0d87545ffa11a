/** Turns an instant into the keeper's day, which lasts until the small hours. */
import { parseCivilDate } from '../husbandry/calendar.ts';
import type { TimeOfDay } from '../husbandry/orders/index.ts';
import { HOURS_PER_DAY, MINUTES_PER_HOUR } from '../husbandry/units.ts';
import type { Now } from './context.ts';

/** Until this hour it is still the day before: the round is often done after midnight. */
const DAY_ENDS_AT_HOUR = 4;
const MINUTES_PER_DAY = HOURS_PER_DAY * MINUTES_PER_HOUR;

const clocks = new Map<string, Intl.DateTimeFormat>();

/** Made once a time zone: making it takes longer than a page may. */
function clockOf(timezone: string): Intl.DateTimeFormat {
  const known = clocks.get(timezone);
  if (known !== undefined) return known;
  const clock = new Intl.DateTimeFormat('en-CA', {
    timeZone: timezone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
  clocks.set(timezone, clock);
  return clock;
}

/** Day and moment of an instant in a time zone (an IANA name). */
export function nowIn(timezone: string, instant: Date): Now {
  const parts = clockOf(timezone).formatToParts(instant);
  const part = (type: string): string => parts.find((each) => each.type === type)?.value ?? '';
  const day = parseCivilDate(`${part('year')}-${part('month')}-${part('day')}`);
  if (!day.ok) throw new Error(`No civil day for ${instant.toISOString()} in ${timezone}`);
  const hour = Number(part('hour'));
  const minutes = hour * MINUTES_PER_HOUR + Number(part('minute'));
  const moment = instant.toISOString();
  return hour < DAY_ENDS_AT_HOUR
    ? { today: day.value - 1, minutes: minutes + MINUTES_PER_DAY, moment, smallHours: true }
    : { today: day.value, minutes, moment };
}

export const timeNow = ({ today, minutes = 0 }: Now): TimeOfDay => ({ today, minutes });
