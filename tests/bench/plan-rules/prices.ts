/** What meals not given are set to cost, so that ways of buying can be compared in one sum. */
import type { Score } from '../plan-worlds/score.ts';

/** Cents for a missed meal of a fragile, an ordinary and a robust animal, and for a danger. Stated, not measured. */
export const MISSED_CENTS: readonly number[] = [300, 100, 50];
export const DANGER_CENTS = 1000;

/** A year on two axes, a week: money, and harm at the prices above. */
export interface Point {
  readonly cents: number;
  readonly harm: number;
}

export const pointOf = ({ cents, weeks, missed, dangers }: Score): Point => ({
  cents: cents / weeks,
  harm:
    (missed.reduce((sum, n, u) => sum + n * (MISSED_CENTS[u] as number), 0) +
      dangers.reduce((sum, n) => sum + n * DANGER_CENTS, 0)) /
    weeks,
});
