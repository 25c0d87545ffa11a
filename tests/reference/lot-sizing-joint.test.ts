/**
 * Two products over six periods that share the price of an order: constructed, no publication. Enumeration over the
 * periods in which anything is ordered, each product by its own recursion, gives 313.
 */
import { expect, it } from 'vitest';
import { leastCost } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';

it('costs 313', () => {
  const problem = textbookProblem({
    demand: [
      [20, 0, 30, 40, 0, 25],
      [10, 15, 0, 20, 10, 30],
    ],
    jointSetup: 60,
    itemSetup: [20, 15],
    holding: [0.5, 0.8],
  });
  expect(leastCost(problem)).toBeCloseTo(313, 6);
});
