/**
 * Loggerhead turtles in seven stages: Crouse, Crowder and Caswell 1987, Ecology 68:1412-1423, Tables 4 and 5.
 * Tolerance: half of the last digit printed; for reproductive values 0.006.
 */
import { expect, it } from 'vitest';
import { growthOf } from '../../src/maths/growth-rate.ts';
import { chainOfMatrix } from '../support/stage-matrix.ts';

const MATRIX = [
  [0, 0, 0, 0, 127, 4, 80],
  [0.6747, 0.737, 0, 0, 0, 0, 0],
  [0, 0.0486, 0.661, 0, 0, 0, 0],
  [0, 0, 0.0147, 0.6907, 0, 0, 0],
  [0, 0, 0, 0.0518, 0, 0, 0],
  [0, 0, 0, 0, 0.8091, 0, 0],
  [0, 0, 0, 0, 0, 0.8091, 0.8089],
];
const STABLE_PERCENT = [20.65, 66.975, 11.46, 0.66, 0.04, 0.03, 0.18];
const REPRODUCTIVE = [1, 1.4, 6, 115.845, 568.78, 507.37, 587.67];

it('shrinks to 0.945 a year with the stable stages and reproductive values of the paper', () => {
  const { rate: factor, stable, reproductive } = growthOf(chainOfMatrix(MATRIX))!;
  expect(Math.abs(factor - 0.9450309806)).toBeLessThan(5e-10);
  STABLE_PERCENT.forEach((percent, i) => {
    expect(Math.abs(stable[i]! * 100 - percent)).toBeLessThan(0.006);
  });
  REPRODUCTIVE.forEach((worth, i) => {
    expect(Math.abs(reproductive[i]! - worth)).toBeLessThan(0.006);
  });
});
