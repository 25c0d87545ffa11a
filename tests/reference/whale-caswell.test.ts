/**
 * Killer whales in four stages, the last past breeding: Brault and Caswell 1993, Ecology 74:1444-1454; Caswell 2001,
 * Matrix Population Models, Example 5.1: growth factor 1.0254, tolerance half of the last digit.
 */
import { expect, it } from 'vitest';
import { growthOf } from '../../src/maths/growth-rate.ts';
import { chainOfMatrix } from '../support/stage-matrix.ts';

const MATRIX = [
  [0, 0.0043, 0.1132, 0],
  [0.9775, 0.9111, 0, 0],
  [0, 0.0736, 0.9534, 0],
  [0, 0, 0.0452, 0.9804],
];

it('grows by 1.0254 a year, and those past breeding are worth nothing to the future', () => {
  const { rate: factor, reproductive } = growthOf(chainOfMatrix(MATRIX))!;
  expect(Math.abs(factor - 1.0254)).toBeLessThan(5e-5);
  expect(reproductive[0]).toBe(1);
  expect(reproductive[3]).toBeLessThan(1e-9);
});
