/**
 * Joint replenishment over one full cycle of the published multiples, a period the published base cycle long: Snyder and
 * Shen 2019, Fundamentals of Supply Chain Theory, 2nd ed. (837.854402626 a year, multiples 1, 3, 1), and Silver, Pyke
 * and Peterson 1998, Inventory Management and Production Planning and Scheduling, 3rd ed., p. 428 (2,067.65084093,
 * multiples 1, 1, 4, 3). The plan is free in when it orders what; it finds nothing cheaper than the multiples. Demand
 * within a period is level in the textbook and at its beginning in the plan: half a period's is kept on top.
 */
import { expect, it } from 'vitest';
import type { PlanProblem } from '../../src/husbandry/plan/problem.ts';
import { leastCost } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';

interface Joint {
  readonly shared: number;
  readonly own: readonly number[];
  readonly keep: readonly number[];
  readonly yearly: readonly number[];
  readonly cycle: number;
  readonly periods: number;
}

/** Counted in periods' demand, so that every product wants 1 a period. */
function problemOf({ shared, own, keep, yearly, cycle, periods }: Joint): PlanProblem {
  return textbookProblem({
    demand: own.map(() => new Array<number>(periods).fill(1)),
    jointSetup: shared,
    itemSetup: own,
    holding: keep.map((each, i) => each * yearly[i]! * cycle * cycle),
  });
}

function yearlyCost(joint: Joint): number {
  const { keep, yearly, cycle, periods } = joint;
  const within = keep.reduce((sum, each, i) => sum + (each * yearly[i]! * cycle) / 2, 0);
  return leastCost(problemOf(joint)) / (periods * cycle) + within;
}

it('costs 837.8544 a year (Snyder and Shen)', () => {
  const joint = { shared: 600, own: [120, 840, 300], keep: [160, 20, 50], yearly: [1, 1, 1] };
  expect(yearlyCost({ ...joint, cycle: 3.10316445417, periods: 3 })).toBeCloseTo(837.854402626, 5);
});

it('costs 2,067.6508 a year (Silver, Pyke and Peterson)', () => {
  const joint = { shared: 40, own: [15, 15, 15, 15], keep: [0.24, 0.24, 0.24, 0.24] };
  const yearly = [86_000, 12_500, 1400, 3000];
  expect(yearlyCost({ ...joint, yearly, cycle: 0.0761734026278, periods: 12 })).toBeCloseTo(2067.65084093, 4);
});
