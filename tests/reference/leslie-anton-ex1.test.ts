/**
 * Age classes that grow by half in each step: Anton and Rorres, Elementary Linear Algebra: Applications Version,
 * section on age-specific population growth, Examples 1 and 2; exact rational results, tolerance 1e-9.
 */
import { expect, it } from 'vitest';
import { growthOf } from '../../src/maths/growth-rate.ts';
import { chainOfMatrix } from '../support/stage-matrix.ts';

const MATRIX = [
  [0, 4, 3],
  [0.5, 0, 0],
  [0, 0.25, 0],
];
const TOLERANCE = 1e-9;

it('grows by 1.5 a step towards classes as 1 to 1/3 to 1/18', () => {
  const { rate: factor, stable } = growthOf(chainOfMatrix(MATRIX))!;
  expect(Math.abs(factor - 1.5)).toBeLessThan(TOLERANCE);
  expect(Math.abs(stable[1]! / stable[0]! - 1 / 3)).toBeLessThan(TOLERANCE);
  expect(Math.abs(stable[2]! / stable[0]! - 1 / 18)).toBeLessThan(TOLERANCE);
});

it('has mothers of 19/9 steps on average: 8/9 of births at age 2, 1/9 at age 3, and not a step more or less', () => {
  const { rate: factor, generation } = growthOf(chainOfMatrix(MATRIX))!;
  expect(Math.abs(factor * generation - 19 / 9)).toBeLessThan(TOLERANCE);
});
