/**
 * Twelve months of Wagner and Whitin 1958, Management Science 5:89-96, the order's price changing from month to month:
 * the best plan costs 864.
 */
import { expect, it } from 'vitest';
import { leastCost } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';

const DEMAND = [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56];
const ORDER = [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114];

it('costs 864', () => {
  const problem = textbookProblem({ demand: [DEMAND], jointSetup: ORDER, holding: [1] });
  expect(leastCost(problem)).toBeCloseTo(864, 6);
});
