/** Stretches of days in a list, the earliest first: one added, one taken away, the same one never twice. */
import type { DayRange } from '../husbandry/calendar.ts';

interface Changed<T> {
  readonly add: T | undefined;
  readonly drop: T | undefined;
}

/** Two stretches are the same when they begin and end on the same days. */
export function withDays<T extends DayRange>(days: readonly T[], { add, drop }: Changed<T>): readonly T[] {
  const isOther = ({ from, to }: T) =>
    [add, drop].every((each) => each === undefined || each.from !== from || each.to !== to);
  const others = days.filter(isOther);
  return [...others, ...(add === undefined ? [] : [add])].toSorted((a, b) => a.from - b.from);
}
