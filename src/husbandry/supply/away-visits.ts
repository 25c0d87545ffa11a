/** The fewest evenings on which somebody must come, so that nobody waits too long, and who is fed on which. */
import type { DayNumber, DayRange } from '../calendar.ts';
import type { MealAhead } from './meal-ahead.ts';

/** An animal that cannot wait: its meal, what follows from being fed, and whether that too cannot wait. */
export interface Waiting {
  readonly animal: string;
  readonly meal: MealAhead;
  readonly fedOn: (day: DayNumber) => MealAhead;
  readonly cannotWait: (meal: MealAhead) => boolean;
}

export interface Visit {
  readonly day: DayNumber;
  readonly animals: readonly string[];
}

/** Last day within the absence on which this meal is still in time; at once when it is late already. */
export const latestDay = ({ open, missedAfter, dangerAfter }: MealAhead, { from, to }: DayRange): DayNumber =>
  Math.max(Math.min(missedAfter, dangerAfter, to), open, from);

/**
 * Visits by day. Where nobody must be fed twice they are the fewest points that meet every interval; else those days
 * from which none can be left out. Each animal is fed as seldom as these days allow.
 */
export function visitsFor(all: readonly Waiting[], within: DayRange): readonly Visit[] {
  const needy = all.filter(({ meal }) => meal.open <= within.to);
  const days = withoutIdle(needy, inTimeDays(needy, within), within);
  const fed = needy.map((each) => ({ animal: each.animal, on: feedings(each, days, within) ?? [] }));
  return days.map((day) => ({
    day,
    animals: fed.filter(({ on }) => on.includes(day)).map(({ animal }) => animal),
  }));
}

/** Each visit put off to the last day that is in time for somebody; everybody is fed then whose meal has opened. */
function inTimeDays(needy: readonly Waiting[], within: DayRange): readonly DayNumber[] {
  const days: DayNumber[] = [];
  let waiting = needy;
  while (waiting.length > 0) {
    const day = Math.min(...waiting.map(({ meal }) => latestDay(meal, within)));
    days.push(day);
    waiting = waiting.flatMap((each) => {
      if (each.meal.open > day) return [each];
      const meal = each.fedOn(day);
      return isDone(each, meal, within) ? [] : [{ ...each, meal }];
    });
  }
  return days;
}

const isDone = ({ cannotWait }: Waiting, meal: MealAhead, { to }: DayRange): boolean =>
  meal.open > to || !cannotWait(meal);

/** Leaves out every day without which everybody can still be fed in time. */
function withoutIdle(
  needy: readonly Waiting[],
  days: readonly DayNumber[],
  within: DayRange,
): readonly DayNumber[] {
  return days.reduce((kept, day) => {
    const fewer = kept.filter((other) => other !== day);
    return needy.every((each) => feedings(each, fewer, within) !== null) ? fewer : kept;
  }, days);
}

/** The fewest of these days on which one animal is fed in time, the later ones of as few; null when they do not do. */
function feedings(each: Waiting, days: readonly DayNumber[], within: DayRange): readonly DayNumber[] | null {
  const upTo = new Map<DayNumber, readonly DayNumber[]>();
  let best: readonly DayNumber[] | null = null;
  const isIn = (meal: MealAhead, day: DayNumber) => meal.open <= day && day <= latestDay(meal, within);
  for (const day of days) {
    const before = days.flatMap((last) => {
      const way = upTo.get(last);
      return way !== undefined && isIn(each.fedOn(last), day) ? [way] : [];
    });
    const ways = isIn(each.meal, day) ? [[], ...before] : before;
    const fewest = ways.reduce<readonly DayNumber[] | null>(fewer, null);
    if (fewest === null) continue;
    const way = [...fewest, day];
    upTo.set(day, way);
    if (isDone(each, each.fedOn(day), within)) best = fewer(best, way);
  }
  return best;
}

const fewer = (a: readonly DayNumber[] | null, b: readonly DayNumber[]): readonly DayNumber[] =>
  a === null || b.length <= a.length ? b : a;
