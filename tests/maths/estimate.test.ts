/** Means with their intervals: a worked sample, and sums of two. */
import { expect, it } from 'vitest';
import { estimate, exactly, sumOf } from '../../src/maths/estimate.ts';

it('is the mean, give or take 1.96 times s over the root of n', () => {
  // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, sum of squares 32, so s = sqrt(32/7).
  const { mean, low, high } = estimate([2, 4, 4, 4, 5, 5, 7, 9]);
  const half = 1.959964 * Math.sqrt(32 / 7 / 8);
  expect(mean).toBe(5);
  expect(high - mean).toBeCloseTo(half, 6);
  expect(mean - low).toBeCloseTo(half, 6);
});

it('of one value, or none, has no width', () => {
  expect(estimate([3])).toEqual(exactly(3));
  expect(estimate([])).toEqual(exactly(0));
});

it('adds errors in squares, on each side by itself', () => {
  const sum = sumOf({ mean: 10, low: 7, high: 14 }, { mean: 1, low: -3, high: 4 });
  expect(sum).toEqual({ mean: 11, low: 6, high: 16 });
  expect(sumOf(exactly(2), { mean: 1, low: 0, high: 3 })).toEqual({ mean: 3, low: 2, high: 5 });
});
