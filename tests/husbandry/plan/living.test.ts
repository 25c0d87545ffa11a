/** Decisions lived through: heads are conserved, the cost is that of the flows, and search and rule stay within bounds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allowedFrom, isAllowed } from '../../../src/husbandry/plan/allowed.ts';
import { faultsOf } from '../../../src/husbandry/plan/check-plan.ts';
import type { Fault } from '../../../src/husbandry/plan/fault.ts';
import { costOfPlan, flowsOf } from '../../../src/husbandry/plan/lived.ts';
import { type Living, livingOf } from '../../../src/husbandry/plan/living.ts';
import { decisionsCost } from '../../../src/husbandry/plan/parcel-cost.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import type { Decisions } from '../../../src/husbandry/plan/proposal.ts';
import { rulePlan } from '../../../src/husbandry/plan/rule-plan.ts';
import { type Costing, searchFrom } from '../../../src/husbandry/plan/search-plan.ts';
import { cheapestOrder } from '../../support/plan/every-order.ts';
import { livedCents } from '../../support/plan/lived-cents.ts';
import { leastCost } from '../../support/plan/optimum.ts';
import { smallProblem } from '../../support/plan/small-problems.ts';

const SLACK = 1e-9;
const RULE_AHEAD = 3;

interface Drawn {
  readonly number: number;
  readonly decided: Decisions;
}

interface Case {
  readonly problem: PlanProblem;
  readonly living: Living;
  readonly decided: Decisions;
}

/** The number of a small problem and some decisions within the bounds of its packs. */
const drawn: fc.Arbitrary<Drawn> = fc.nat({ max: 2000 }).chain((number) => {
  const problem = smallProblem(number);
  const within = ({ least, most }: { least: number; most: number }) => fc.integer({ min: least, max: most });
  const slots = problem.parcels.map(({ packs }) => fc.tuple(...packs.map(within)));
  return fc.record({
    number: fc.constant(number),
    decided: fc.record({
      packs: fc.tuple(...slots),
      cups: fc.tuple(...problem.starts.map(within)),
      rests: fc.tuple(...problem.rests.map(within)),
    }),
  });
});

function caseOf({ number, decided }: Drawn): Case {
  const problem = smallProblem(number);
  return { problem, living: livingOf(problem), decided };
}

/** Priced as lived through in the mean. */
const costingOf = (living: Living): Costing => ({
  problem: living.problem,
  costOf: (decided) => costOfPlan(living, decided),
});

/** Holds for so many cases. */
const always = (seed: number, numRuns: number, holds: (each: Case, seed: number) => boolean): void =>
  fc.assert(
    fc.property(drawn, fc.nat(), (each, dice) => holds(caseOf(each), dice)),
    { seed, numRuns },
  );

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
    always(1, 500, (each) => {
      const kinds = kindsOf(each);
      return !(['conservation', 'meals', 'late', 'room'] as const).some((kind) => kinds.has(kind));
    });
  });

  it('cost what their flows cost', () => {
    always(2, 500, ({ problem, living, decided }) => {
      const cents = decisionsCost(problem, decided) + livedCents(problem, flowsOf(living, decided));
      return Math.abs(costOfPlan(living, decided) - cents) < 1e-6;
    });
  });

  it('cost the same whatever was lived through before', () => {
    always(3, 100, ({ problem, living, decided }) => {
      const once = costOfPlan(living, decided);
      flowsOf(living, { packs: problem.parcels.map(({ packs }) => packs.map(() => 1)), cups: [], rests: [] });
      return costOfPlan(living, decided) === once;
    });
  });

  it('never cost less than the best use of the best order', () => {
    always(4, 60, ({ problem, living, decided }) => {
      if (!isAllowed(problem, decided)) return true;
      return costOfPlan(living, decided) >= leastCost(problem) - 1e-4;
    });
  });
});

describe('prey is eaten', () => {
  it('in the order in which it outgrows the eater, whatever species it is, and what must be killed last', () => {
    always(10, 200, ({ problem }) =>
      livingOf(problem).eaters.every(({ fare }, e) =>
        Array.from(fare)
          .slice(1)
          .every((k, i) => {
            const [sooner, later] = [fare[i], k].map((at) => problem.eaters[e]!.fare[at!]!);
            return sooner!.cents === later!.cents
              ? sooner!.ripeness >= later!.ripeness
              : sooner!.cents < later!.cents;
          }),
      ),
    );
  });
});

describe('the search', () => {
  it('never ends worse than it began, and tells what its plan costs', () => {
    always(5, 100, ({ problem, living, decided }, seed) => {
      const found = searchFrom(costingOf(living), decided, { trials: 60, seed });
      if (isAllowed(problem, decided) && found.cost > costOfPlan(living, decided)) return false;
      return (
        found.cost === (isAllowed(problem, found) ? costOfPlan(living, found) : Number.POSITIVE_INFINITY)
      );
    });
  });

  it('ends at the same plan from the same seed', () => {
    always(6, 50, ({ living, decided }, seed) => {
      const first = searchFrom(costingOf(living), decided, { trials: 60, seed });
      expect(searchFrom(costingOf(living), decided, { trials: 60, seed })).toEqual(first);
      return true;
    });
  });

  it('leaves no fault in a plan that had none', () => {
    always(7, 100, (each, seed) => {
      if (kindsOf(each).size > 0) return true;
      const found = searchFrom(costingOf(each.living), each.decided, { trials: 100, seed });
      return kindsOf({ ...each, decided: found }).size === 0;
    });
  });
});

describe('what can be carried out', () => {
  it('is what the checker finds no fault with', () => {
    always(8, 300, (each) => isAllowed(each.problem, each.decided) === (kindsOf(each).size === 0));
  });

  it('is left as it is, and all else is brought to it wherever any plan can be', () => {
    always(9, 150, ({ problem, decided }) => {
      const allowed = allowedFrom(problem, decided);
      if (isAllowed(problem, decided)) expect(allowed).toEqual(decided);
      return isAllowed(problem, allowed) || cheapestOrder(problem) === null;
    });
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
