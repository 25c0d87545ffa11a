/** What is left at the end: for how long it is food, what it is then worth, and that it never pays for an order by itself. */
import { describe, expect, it } from 'vitest';
import { endFareOf } from '../../../src/husbandry/plan/lasting.ts';
import type { Fare, PlanEater, PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { bestPlan, buyingRoom, laidOut } from '../../support/plan/planned.ts';
import { facts } from '../../support/room.ts';

const fareAt = (node: number, items: number): Fare => ({
  place: 0,
  node,
  items,
  cents: 0,
  cap: -1,
  ripeness: 0,
});

const stepOf = (...rows: number[][]) => rows.map((row) => Float64Array.from(row));

describe('what is left of a node', () => {
  it('lasts until half of it is gone, and is worth its mean until then', () => {
    const [only] = endFareOf([fareAt(0, 2)], { week: [stepOf([0.6])], endWeeks: 9, leastItems: 0.1 });
    // 2, 1.2, then 0.72, which is below half.
    expect(only).toEqual({ place: 0, node: 0, items: 1.6, span: 2, until: 2 });
  });

  it('can be eaten once it has grown into the window', () => {
    const week = [stepOf([0, 0, 0], [1, 0, 0], [0, 1, 1])];
    const fare = endFareOf([fareAt(2, 1)], { week, endWeeks: 5, leastItems: 0.1 });
    expect(fare.map(({ node, span, until }) => [node, span, until])).toEqual([
      [0, 3, 5],
      [1, 4, 5],
      [2, 5, 5],
    ]);
    expect(fare.map(({ items }) => items)).toEqual([1, 1, 1]);
  });

  it('is past it once it has grown out of the window', () => {
    const week = [stepOf([0, 0], [1, 1])];
    const fare = endFareOf([fareAt(0, 1)], { week, endWeeks: 5, leastItems: 0.1 });
    expect(fare).toEqual([{ place: 0, node: 0, items: 1, span: 1, until: 1 }]);
  });

  it('is not counted on where hardly one in ten becomes food', () => {
    const week = [stepOf([0, 0], [0.09, 1])];
    const fare = endFareOf([fareAt(1, 1)], { week, endWeeks: 5, leastItems: 0.1 });
    expect(fare.map(({ node }) => node)).toEqual([1]);
  });
});

describe('what will be wanted after the last week', () => {
  const { problem } = laidOut(buyingRoom(), 8);

  it('is there', () => {
    expect(problem.eaters.filter(({ end }) => end.weekly > 0 && end.fare.length > 0).length).toBeGreaterThan(
      9,
    );
  });

  it('pays for no pack that comes in the last week, whoever eats which of it, even at its lowest price', () => {
    const paid = sharesPaid(problem);
    const most = Math.max(...paid);
    expect(most).toBeLessThan(1);
    // Not far below what is allowed.
    expect(most).toBeGreaterThan(0.7 * facts.policy.planEndShare.value);
  });

  it('brings about no order where nothing is wanted before', () => {
    const nothing = (eater: PlanEater): PlanEater => ({
      ...eater,
      wanted: eater.wanted.map(() => 0),
      lateMost: eater.lateMost.map(() => 0),
    });
    const later = { ...problem, eaters: problem.eaters.map(nothing), pools: [] };
    expect(bestPlan(later, 2).bought).toEqual({});
  });
});

/** Of every pack that comes last, the share of its lowest price that it is worth at the end, eaten by whom it is worth most. */
function sharesPaid({ parcels, eaters, periods }: PlanProblem): number[] {
  const worthTo = ({ end }: PlanEater, at: { place: number; node: number }): number =>
    end.fare.reduce(
      (most, each) =>
        each.place === at.place && each.node === at.node ? Math.max(most, end.cents * each.items) : most,
      0,
    );
  return parcels
    .filter(({ period }) => period === periods - 1)
    .flatMap(({ packs }) =>
      packs.map(({ place, brings, breaks }) => {
        const worth = brings.reduce(
          (sum, n, node) => sum + n * Math.max(...eaters.map((eater) => worthTo(eater, { place, node }))),
          0,
        );
        return worth / Math.min(...breaks.map(({ cents }) => cents));
      }),
    );
}
