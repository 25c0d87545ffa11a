/** The temperatures a bin goes through, day by day. */
import type { DayNumber } from '../calendar.ts';
import { type DayTemp, meanOfDay } from '../prey/index.ts';
import { DAYS_PER_WEEK, type TempC } from '../units.ts';

export interface Climate {
  /** The day's least and greatest temperature. */
  readonly on: (day: DayNumber) => DayTemp;
  /** Mean of the seven days that end with this one: what a hard stop is judged by. */
  readonly weekMeanOn: (day: DayNumber) => TempC;
  /** Whether days differ. */
  readonly changes: boolean;
}

/** Every day alike. */
export function steadyClimate(temp: DayTemp): Climate {
  const mean = meanOfDay(temp);
  return { on: () => temp, weekMeanOn: () => mean, changes: false };
}

/** Days that differ. */
export function changingClimate(on: (day: DayNumber) => DayTemp): Climate {
  const means = new Map<DayNumber, TempC>();
  const weekMeanOn = (day: DayNumber): TempC => {
    const known = means.get(day);
    if (known !== undefined) return known;
    let sum = 0;
    for (let back = 0; back < DAYS_PER_WEEK; back++) sum += meanOfDay(on(day - back));
    means.set(day, sum / DAYS_PER_WEEK);
    return sum / DAYS_PER_WEEK;
  };
  return { on, weekMeanOn, changes: true };
}
