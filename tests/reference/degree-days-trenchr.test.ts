/**
 * Degree-days above 12 and below 33 C, single sine with horizontal cut-off: the test suite of the R package TrenchR
 * (github.com/trenchproject/TrenchR, commit ca58d44), after the formulas of UC IPM. Tolerance 0.006.
 *
 * Not used: the suite's row of 5 for 35 to 40 C (above the upper threshold all day, so 33 - 12 = 21, as the suite's
 * own other methods say; that is tested below), and its double-triangle values, which are not ours to compute.
 */
import { expect, it } from 'vitest';
import { meanOverSineDay } from '../../src/maths/sine-day.ts';

const aboveLower = { x: [12, 33], y: [0, 21] };

it.each([
  [7, 14, 0.47],
  [7, 10, 0],
  [13, 14, 1.5],
  [13, 40, 12.94],
  [7, 40, 10.94],
] as const)('degree-days from %d to %d C are %f', (min, max, published) => {
  expect(Math.abs(meanOverSineDay(aboveLower, min, max) - published)).toBeLessThan(0.006);
});

it('counts a day wholly above the upper threshold as the whole range, 21', () => {
  expect(meanOverSineDay(aboveLower, 35, 40)).toBeCloseTo(21, 12);
});
