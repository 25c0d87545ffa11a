/** Orders that the engine finds no use for are left out of a plan; those that feed somebody stay. */
import { describe, expect, it } from 'vitest';
import { benchFor } from '../../../src/husbandry/plan/judge-plan.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import { type Decisions, withoutLine } from '../../../src/husbandry/plan/proposal.ts';
import { proposed } from '../../../src/husbandry/plan/solve-plan.ts';
import { judged, type Tried } from '../../../src/husbandry/plan/tried.ts';
import { weeded } from '../../../src/husbandry/plan/weeded.ts';
import { buyingRoom, laidOut, stock } from '../../support/plan/planned.ts';

const WEEKS = 8;

/** A room with so many times its heads, and a plan that buys one pack of everything in the first parcel of each supplier. */
function plan(times: number) {
  const { laid, problem } = laidOut(buyingRoom({ bins: times > 0 ? stock(times) : [] }), WEEKS);
  const bench = benchFor(laid, 'quick');
  const seen = new Set<string>();
  const decided: Decisions = {
    packs: problem.parcels.map(({ packs }, i) => {
      const supplier = laid.parcels[i]!.supplier.code;
      const isFirst = !seen.has(supplier);
      seen.add(supplier);
      return packs.map(({ most }) => (isFirst ? Math.min(2, Math.floor(most)) : 0));
    }),
    cups: problem.starts.map(() => 0),
    rests: problem.rests.map(() => 0),
  };
  const proposal = proposed(livingOf(problem), decided);
  const tried: Tried = {
    level: 0.85,
    problem,
    proposal,
    made: 'rule',
    gap: null,
    ...judged(bench, { level: 0.85, problem, proposal }),
  };
  return { bench, tried };
}

const bought = ({ proposal }: Tried): number => proposal.packs.flat().reduce((sum, count) => sum + count, 0);

describe('weeding', () => {
  it('leaves hardly anything to buy in a room that has plenty, and nothing that is of no use', () => {
    const { bench, tried } = plan(60);
    const left = weeded(bench, tried);
    expect(bought(left)).toBeLessThan(bought(tried) / 4);
    expect(left.score).toBeLessThan(tried.score);
    const { level, problem, proposal } = left;
    const kept = problem.parcels.flatMap(({ packs }, i) =>
      packs.filter((_, j) => (proposal.packs[i]?.[j] ?? 0) > 0).map(({ key }) => key),
    );
    for (const key of kept) {
      const rest = proposed(livingOf(problem), withoutLine(problem, proposal, key));
      expect(judged(bench, { level, problem, proposal: rest }).score).toBeGreaterThanOrEqual(left.score);
    }
  });

  it('keeps what feeds somebody where there is nothing else, and never costs more', () => {
    const { bench, tried } = plan(0);
    const left = weeded(bench, tried);
    expect(bought(left)).toBeGreaterThan(0);
    expect(bought(left)).toBeLessThanOrEqual(bought(tried));
    expect(left.score).toBeLessThanOrEqual(tried.score);
    expect(left.unserved).toBeLessThanOrEqual(tried.unserved);
    expect(left.verdict.missedMeals.mean).toBeLessThan(missedWithNothing(bench, tried));
  });
});

/** Meals missed where nothing is bought. */
function missedWithNothing(
  bench: ReturnType<typeof plan>['bench'],
  { level, problem, proposal }: Tried,
): number {
  const nothing = {
    packs: proposal.packs.map((row) => row.map(() => 0)),
    cups: proposal.cups.map(() => 0),
    rests: proposal.rests,
  };
  return judged(bench, { level, problem, proposal: proposed(livingOf(problem), nothing) }).verdict.missedMeals
    .mean;
}
