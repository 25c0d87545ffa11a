/**
 * Five periods of production, an exercise of the University of Southampton (edshare.soton.ac.uk, 4121): the best plan
 * costs 320, and 380 where 40 are to be left at the end. What is left is written as demand of the last period, so that
 * keeping it beyond that period costs nothing, as in the exercise.
 */
import { expect, it } from 'vitest';
import { leastCost } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';

it.each([
  { left: 0, cost: 320 },
  { left: 40, cost: 380 },
])('with $left to be left at the end costs $cost', ({ left, cost }) => {
  const demand = [40, 20, 10, 30, 20 + left];
  const problem = textbookProblem({ demand: [demand], jointSetup: 100, holding: [2] });
  expect(leastCost(problem)).toBeCloseTo(cost, 6);
});
