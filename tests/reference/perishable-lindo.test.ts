/**
 * Perishable goods in cases of twelve that can be sold in the period they come or the next: demand and prices of LINDO
 * Systems' LINGO model library, model PERISHLS, which prints no result. Our own recursion over what is left gives a
 * profit of 8,630: every unit wanted earns 75, one not sold loses it, an order costs 200 and a unit 35.
 */
import { expect, it } from 'vitest';
import { leastCost } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';

const DEMAND = [33, 21, 63, 32, 13, 17, 53, 15];
const PRICE = 75;

const known = new Map<string, number>();

/** Best profit from a period on, by how many are left of the last cases. */
function profitFrom(period: number, left: number): number {
  const wanted = DEMAND[period];
  if (wanted === undefined) return 0;
  const name = `${period} ${left}`;
  const before = known.get(name);
  if (before !== undefined) return before;
  let best = Number.NEGATIVE_INFINITY;
  for (let cases = 0; cases <= 8; cases++) {
    const fresh = 12 * cases;
    const old = Math.min(left, wanted);
    const sold = Math.min(fresh, wanted - old);
    const cost = (cases > 0 ? 200 : 0) + 35 * fresh;
    best = Math.max(best, PRICE * (old + sold) - cost + profitFrom(period + 1, fresh - sold));
  }
  known.set(name, best);
  return best;
}

it('earns 8,630', () => {
  const problem = textbookProblem({
    demand: [DEMAND],
    jointSetup: 200,
    unitCost: 35,
    holding: [0],
    lostSale: PRICE,
    life: 2,
    packSize: 12,
  });
  const most = PRICE * DEMAND.reduce((a, b) => a + b, 0);
  expect(most - leastCost(problem)).toBeCloseTo(8630, 6);
});

it('earns as much by recursion', () => {
  expect(profitFrom(0, 0)).toBe(8630);
});
