/** 200 small plans: the programme's best is the cheapest of every order there is, and its flows can be carried out. */
import { describe, expect, it } from 'vitest';
import { faultsOf } from '../../../src/husbandry/plan/check-plan.ts';
import { decisionsOf, programmeFlows } from '../../../src/husbandry/plan/proposal.ts';
import { cheapestOrder } from '../../support/plan/every-order.ts';
import { optimumOf } from '../../support/plan/optimum.ts';
import { smallProblem } from '../../support/plan/small-problems.ts';

const PLANS = 200;
const BLOCK = 25;
const SLACK = 1e-5;

describe('the best of a small plan', () => {
  for (let first = 0; first < PLANS; first += BLOCK)
    it(`is the cheapest of every order there is: ${first + 1} to ${first + BLOCK}`, () => {
      for (let number = first; number < first + BLOCK; number++) {
        const problem = smallProblem(number);
        const best = optimumOf(problem);
        const tried = cheapestOrder(problem);
        expect(best === null, `problem ${number} can be solved`).toBe(tried === null);
        if (!best || !tried) continue;
        const off = Math.abs(best.found.value - tried.cost);
        expect(off, `problem ${number}: ${best.found.value} of ${tried.cost}`).toBeLessThan(SLACK * 10);
        const { packs, cups, rests } = decisionsOf(best.laid, best.found);
        const proposal = {
          packs: packs.map((row) => row.map(Math.round)),
          cups: cups.map(Math.round),
          rests,
          flows: programmeFlows(problem, best.laid, best.found),
          value: best.found.value,
        };
        expect(faultsOf(problem, proposal, SLACK), `problem ${number}`).toEqual([]);
      }
    });
});
