/** What an animal's own record says of its interval. */
import type { Animal, StageRule } from '../animals/index.ts';
import type { Policy } from '../policy.ts';

export interface IntervalRange {
  readonly min: number;
  readonly max: number;
}

/**
 * The rule's range, or with enough intervals on record the same range moved to the animal's own mean, shrunken to the
 * kind's: (n m + w m0)/(n + w), n intervals of mean m, the kind's mean m0 weighing w intervals.
 */
export function learnedInterval(rule: StageRule, animal: Animal, policy: Policy): IntervalRange {
  const [min, max] = rule.intervalDays.value;
  const own = animal.intervalsOnRecord;
  if (own.length < policy.intervalsNeeded.value) return { min, max };
  const kindMean = (min + max) / 2;
  const weight = policy.intervalPriorWeight.value;
  const mean = own.reduce((sum, days) => sum + days, weight * kindMean) / (own.length + weight);
  const shift = Math.round(mean - kindMean);
  return { min: Math.max(1, min + shift), max: Math.max(1, max + shift) };
}
