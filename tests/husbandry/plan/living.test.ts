/** Decisions lived through: heads are conserved, the cost is that of the flows, and search and rule stay within bounds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fault, faultsOf } from '../../../src/husbandry/plan/check-plan.ts';
import { costOfPlan, flowsOf } from '../../../src/husbandry/plan/lived.ts';
import { type Living, livingOf } from '../../../src/husbandry/plan/living.ts';
import { decisionsCost } from '../../../src/husbandry/plan/parcel-cost.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import type { Decisions } from '../../../src/husbandry/plan/proposal.ts';
import { rulePlan } from '../../../src/husbandry/plan/rule-plan.ts';
import { searchFrom } from '../../../src/husbandry/plan/search-plan.ts';
import { cheapestOrder } from '../../support/plan/every-order.ts';
import { livedCents } from '../../support/plan/lived-cents.ts';
import { leastCost } from '../../support/plan/optimum.ts';
import { smallProblem } from '../../support/plan/small-problems.ts';

const SLACK = 1e-9;
const RULE_AHEAD = 3;

interface Case {
  readonly problem: PlanProblem;
  readonly living: Living;
  readonly decided: Decisions;
}

/** A small problem and some decisions within the bounds of their packs. */
const cases: fc.Arbitrary<Case> = fc.nat({ max: 2000 }).chain((number) => {
  const problem = smallProblem(number);
  const slots = problem.parcels.map(({ packs }) =>
    fc.tuple(...packs.map(({ least, most }) => fc.integer({ min: least, max: most }))),
  );
  const cups = problem.starts.map(({ least, most }) => fc.integer({ min: least, max: most }));
  return fc.record({
    problem: fc.constant(problem),
    living: fc.constant(livingOf(problem)),
    decided: fc.record({ packs: fc.tuple(...slots), cups: fc.tuple(...cups) }),
  });
});

const kindsOf = ({ problem, living, decided }: Case): Set<Fault['what']> => {
  const proposal = { ...decided, flows: flowsOf(living, decided), value: 0 };
  return new Set(faultsOf(problem, proposal, SLACK).map(({ what }) => what));
};

/** Small problems of which at least one order can be placed. */
const solvable = (count: number): { problem: PlanProblem; living: Living; least: number }[] =>
  Array.from({ length: count }, (_, number) => smallProblem(number)).flatMap((problem) => {
    const least = cheapestOrder(problem)?.cost;
    return least === undefined ? [] : [{ problem, living: livingOf(problem), least }];
  });

describe('decisions lived through', () => {
  it('conserve heads, account for every meal and keep within the room', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const kinds = kindsOf(each);
        return !['conservation', 'meals', 'late', 'room'].some((kind) => kinds.has(kind as Fault['what']));
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('cost what their flows cost', () => {
    fc.assert(
      fc.property(cases, ({ problem, living, decided }) => {
        const cents = decisionsCost(problem, decided) + livedCents(problem, flowsOf(living, decided));
        return Math.abs(costOfPlan(living, decided) - cents) < 1e-6;
      }),
      { seed: 2, numRuns: 500 },
    );
  });

  it('cost the same whatever was lived through before', () => {
    fc.assert(
      fc.property(cases, ({ problem, living, decided }) => {
        const once = costOfPlan(living, decided);
        flowsOf(living, { packs: problem.parcels.map(({ packs }) => packs.map(() => 1)), cups: [] });
        return costOfPlan(living, decided) === once;
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it('never cost less than the best use of the best order', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const kinds = kindsOf(each);
        if (kinds.has('minimum') || kinds.has('budget')) return true;
        return costOfPlan(each.living, each.decided) >= leastCost(each.problem) - 1e-4;
      }),
      { seed: 4, numRuns: 60 },
    );
  });
});

describe('the search', () => {
  it('never ends worse than it began, and the same seed ends at the same plan', () => {
    fc.assert(
      fc.property(cases, fc.nat(), ({ living, decided }, seed) => {
        const first = searchFrom(living, decided, { trials: 60, seed });
        const again = searchFrom(living, decided, { trials: 60, seed });
        expect(again).toEqual(first);
        return first.cost <= costOfPlan(living, decided) && first.cost === costOfPlan(living, first);
      }),
      { seed: 5, numRuns: 100 },
    );
  });

  it('leaves no fault in a plan that had none', () => {
    fc.assert(
      fc.property(cases, fc.nat(), (each, seed) => {
        if (kindsOf(each).size > 0) return true;
        const found = searchFrom(each.living, each.decided, { trials: 100, seed });
        return kindsOf({ ...each, decided: found }).size === 0;
      }),
      { seed: 6, numRuns: 100 },
    );
  });
});

describe('the rule', () => {
  it('makes plans that can be carried out, wherever any plan can', () => {
    for (const [i, { problem, living }] of solvable(150).entries()) {
      const decided = rulePlan(living, RULE_AHEAD);
      const proposal = { ...decided, flows: flowsOf(living, decided), value: 0 };
      expect(faultsOf(problem, proposal, SLACK), `problem ${i}`).toEqual([]);
    }
  });
});
