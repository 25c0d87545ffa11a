/**
 * One delivery for a demand that is not known, bought by the plan: the mean to be eaten and a pool that stands ready
 * with the critical ratio as its chance. Compared are the quantity and its expected cost. Snyder and Shen 2019,
 * Fundamentals of Supply Chain Theory, 2nd ed., Example 4.3 (normal: 56.604, cost 1.9976), Example 4.7 and Problem
 * 4.8(a) (Poisson: 8, 3.5701; 19, 786.088); Nahmias, Production and Operations Analysis, newsstand (normal: 15).
 *
 * Their log-normal case (Problem 4.8(b)) has a critical ratio of 0.15, less than the mean: a plan always buys what is
 * wanted on the mean, and stands ready beyond it; the case cannot be written.
 */
import { expect, it } from 'vitest';
import { decisionsOf } from '../../src/husbandry/plan/proposal.ts';
import { normalQuantile } from '../../src/maths/normal.ts';
import { poissonQuantile } from '../../src/maths/whole-draws.ts';
import { optimumOf } from '../support/plan/optimum.ts';
import { textbookProblem } from '../support/plan/textbook.ts';
import { drawsOf, meanOf, withPool } from '../support/plan/uncertain.ts';

interface Newsvendor {
  readonly over: number;
  readonly under: number;
  readonly quantile: (p: number) => number;
  readonly whole: boolean;
}

const DRAWS = 20_000;
/** As good as nothing: goods that cost nothing could as well be thrown away. */
const UNIT_COST = 1e-3;

/** What the plan buys, and its mean cost over the draws. */
function bought({ over, under, quantile, whole }: Newsvendor): { units: number; cost: number } {
  const draws = drawsOf(DRAWS, quantile);
  const plain = textbookProblem({
    demand: [[meanOf(draws)]],
    jointSetup: 0,
    unitCost: UNIT_COST,
    holding: [over],
  });
  const level = under / (under + over);
  const packs = plain.parcels.map((parcel) => ({
    ...parcel,
    packs: parcel.packs.map((pack) => ({ ...pack, most: 1000 })),
  }));
  const problem = withPool({ ...plain, parcels: packs }, { draws: [draws], level, cents: 1e4 });
  const { laid, found } = optimumOf(problem, Number(whole))!;
  const units = decisionsOf(laid, found).packs[0]![0]!;
  const costs = draws.map(
    (wanted) => over * Math.max(0, units - wanted) + under * Math.max(0, wanted - units),
  );
  return { units, cost: meanOf(costs) };
}

const normal = (mean: number, sd: number) => (p: number) => mean + sd * normalQuantile(p);

it('buys 56.604 of a normal demand at 1.9976 (Example 4.3)', () => {
  const { units, cost } = bought({ over: 0.18, under: 0.7, quantile: normal(50, 8), whole: false });
  expect(units).toBeCloseTo(56.6039559274, 2);
  expect(cost).toBeCloseTo(1.99760519318, 2);
});

it('buys 15 newspapers (Nahmias)', () => {
  const { units } = bought({ over: 0.15, under: 0.5, quantile: normal(11.73, 4.74), whole: false });
  expect(Math.round(units)).toBe(15);
});

it.each([
  { name: 'Example 4.7', over: 1, under: 4, mean: 6, units: 8, cost: 3.57010694577 },
  { name: 'Problem 4.8(a)', over: 200, under: 270, mean: 18, units: 19, cost: 786.088440935 },
])('buys $units of a Poisson demand at $cost ($name)', ({ over, under, mean, ...expected }) => {
  const quantile = (p: number) => poissonQuantile(p, mean);
  const { units, cost } = bought({ over, under, quantile, whole: true });
  expect(units).toBe(expected.units);
  expect(Math.abs(cost / expected.cost - 1)).toBeLessThan(1e-3);
});
