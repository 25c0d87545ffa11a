/**
 * Twelve months of Silver, Pyke and Peterson 1998, Inventory Management and Production Planning and Scheduling, 3rd
 * ed., chapter 6: an order costs 54, a box of 20 costs 2 % a month to keep; the best plan costs 501.20.
 */
import { expect, it } from 'vitest';
import { leastCost } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';

const DEMAND = [10, 62, 12, 130, 154, 129, 88, 52, 124, 160, 238, 41];

it('costs 501.20', () => {
  const problem = textbookProblem({ demand: [DEMAND], jointSetup: 54, holding: [20 * 0.02] });
  expect(leastCost(problem)).toBeCloseTo(501.2, 6);
});
