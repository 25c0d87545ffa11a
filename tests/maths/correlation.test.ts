/** Pearson's correlation by hand. */
import { expect, it } from 'vitest';
import { correlation } from '../../src/maths/correlation.ts';

const listOf = (...values: number[]) => Float64Array.from(values);

it('is 1 or -1 along a line, whatever its slope', () => {
  expect(correlation(listOf(1, 2, 3), listOf(10, 30, 50))).toBeCloseTo(1, 15);
  expect(correlation(listOf(1, 2, 3), listOf(5, 3, 1))).toBeCloseTo(-1, 15);
});

it('is the covariance over both spreads: 3/sqrt(10 * 2.8) for 1..5 and 2, 1, 3, 2, 3', () => {
  expect(correlation(listOf(1, 2, 3, 4, 5), listOf(2, 1, 3, 2, 3))).toBeCloseTo(3 / Math.sqrt(10 * 2.8), 15);
});

it('is 0 where one list stands still', () => {
  expect(correlation(listOf(1, 2, 3), listOf(4, 4, 4))).toBe(0);
});
