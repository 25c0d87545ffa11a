/** One animal's next meal as far as it may wait: when it opens, when it counts as missed, when its safe gap is over. */
import { type Animal, ruleOf, type StageRule } from '../animals/index.ts';
import { learnedInterval } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Policy } from '../policy.ts';
import type { Snapshot } from '../snapshot.ts';
import { type NextMeal, nextMealOf, shutUntil } from './next-meal.ts';

export interface MealAhead {
  /** First day on which it may be offered. */
  readonly open: DayNumber;
  /** Last day on which an offer keeps it from being missed. */
  readonly missedAfter: DayNumber;
  /** Last day within the safe gap. */
  readonly dangerAfter: DayNumber;
}

/** The meal that follows from being fed on a day. */
export function mealAfter(day: DayNumber, { rule, min, max }: Interval): MealAhead {
  return {
    open: day + min,
    missedAfter: day + max + Math.floor(rule.graceDays.value),
    dangerAfter: day + Math.floor(rule.safeGapDays.value),
  };
}

export interface Interval {
  readonly rule: StageRule;
  readonly min: number;
  readonly max: number;
}

/** Rule and interval of an animal as it is now. */
export function intervalOf(animal: Animal, { kinds, policy }: Snapshot['facts']): Interval {
  const kind = kinds.get(animal.kind);
  if (!kind) throw new Error(`animal ${animal.code} has the unknown kind ${animal.kind}`);
  const rule = ruleOf(kind, animal);
  return { rule, ...learnedInterval(rule, animal, policy as Policy) };
}

/** The next meal, after the usual evenings before `leaving`: an animal still shut then opens when it is hard. */
export function mealAtLeaving(snapshot: Snapshot, animal: Animal, leaving: DayNumber): MealAhead {
  const interval = intervalOf(animal, snapshot.facts);
  let meal = nextMealOf(snapshot, animal);
  let evening = eveningOfMeal(snapshot, meal);
  if (evening === null || evening >= leaving) return asItStands(snapshot, meal, interval);
  for (;;) {
    const fed = afterMeal(animal, evening);
    const then = { ...snapshot, today: evening };
    meal = nextMealOf(then, fed);
    if (meal.evening === null || meal.evening >= leaving || meal.evening <= evening)
      return mealAfter(evening, interval);
    evening = meal.evening;
  }
}

/** The evening it falls on, not before the animal may be fed again. */
function eveningOfMeal(snapshot: Snapshot, meal: NextMeal): DayNumber | null {
  const shut = shutUntil(meal.animal, meal.rule, snapshot.today);
  if (shut === null || meal.evening === null || shut <= meal.evening) return meal.evening;
  const later = nextMealOf({ ...snapshot, today: shut }, meal.animal);
  return later.evening;
}

/** The meal that follows from the record: while the animal is shut the range waits, and the safe gap begins anew. */
function asItStands({ today }: Snapshot, { animal, rule, from, to }: NextMeal, { max }: Interval): MealAhead {
  const shut = shutUntil(animal, rule, today);
  const last = shut !== null && shut > from ? shut + to - from : to;
  const tended = Math.max(animal.lastOffered ?? to - max, shut ?? Number.NEGATIVE_INFINITY);
  return {
    open: Math.max(from, shut ?? from),
    missedAfter: last + Math.floor(rule.graceDays.value),
    dangerAfter: tended + Math.floor(rule.safeGapDays.value),
  };
}

/** The animal after a meal taken on an evening. */
export const afterMeal = (animal: Animal, evening: DayNumber): Animal => ({
  ...animal,
  lastOffered: evening,
  lastOutcome: 'taken',
  lastTaken: evening,
});
