/** Readings put together by day: the least and the greatest of each, with the days between that have none. */
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { TempSeries } from '../../husbandry/snapshot.ts';
import type { TempC } from '../../husbandry/units.ts';

export interface TempReading {
  readonly day: DayNumber;
  readonly minC: TempC;
  readonly maxC: TempC;
}

const TENTHS = 10;
const rounded = (tempC: TempC): TempC => Math.round(tempC * TENTHS) / TENTHS;

/** The series of some readings, at least one; several of one day give its least and its greatest. */
export function seriesOf(readings: readonly TempReading[]): TempSeries {
  const byDay = new Map<DayNumber, TempReading>();
  for (const reading of readings) {
    const before = byDay.get(reading.day) ?? reading;
    byDay.set(reading.day, {
      day: reading.day,
      minC: Math.min(before.minC, reading.minC),
      maxC: Math.max(before.maxC, reading.maxC),
    });
  }
  return laidOut(byDay);
}

function laidOut(byDay: ReadonlyMap<DayNumber, TempReading>): TempSeries {
  const days = [...byDay.keys()];
  const from = days.reduce((least, day) => Math.min(least, day));
  const to = days.reduce((most, day) => Math.max(most, day));
  const each = (of: (reading: TempReading) => TempC) =>
    Array.from({ length: to - from + 1 }, (_, at) => {
      const reading = byDay.get(from + at);
      return reading === undefined ? null : rounded(of(reading));
    });
  return { from, minC: each(({ minC }) => minC), maxC: each(({ maxC }) => maxC) };
}

/** Days of a series that have a reading. */
export const measuredDays = ({ from, minC, maxC }: TempSeries): readonly TempReading[] =>
  minC.flatMap((least, at) => {
    const most = maxC[at] ?? null;
    return least === null || most === null ? [] : [{ day: from + at, minC: least, maxC: most }];
  });

/** A series with newer readings: on a day that has both, the newer ones count. */
export function withNewer(before: TempSeries | null, newer: TempSeries): TempSeries {
  const days = [...(before === null ? [] : measuredDays(before)), ...measuredDays(newer)];
  return laidOut(new Map(days.map((reading) => [reading.day, reading])));
}
