/**
 * Lot sizing of Snyder and Shen 2019, Fundamentals of Supply Chain Theory, 2nd ed.: Example 3.9 (1,380), Problem 3.29
 * (423), and five equal periods with two best plans (280). Costs are compared, never plans.
 */
import { expect, it } from 'vitest';
import { leastCost } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';

it.each([
  { name: 'Example 3.9', demand: [90, 120, 80, 70], order: 500, holding: 2, cost: 1380 },
  { name: 'Problem 3.29', demand: [730, 580, 445, 650, 880], order: 100, holding: 0.1, cost: 423 },
  { name: 'five equal periods', demand: [200, 200, 200, 200, 200], order: 100, holding: 0.1, cost: 280 },
])('$name costs $cost', ({ demand, order, holding, cost }) => {
  const problem = textbookProblem({ demand: [demand], jointSetup: order, holding: [holding] });
  expect(leastCost(problem)).toBeCloseTo(cost, 6);
});
