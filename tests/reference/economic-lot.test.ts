/**
 * Economic order quantities written as one cycle of a plan: demand of one pack a period, n periods long. The plan's
 * average cost a year, over the n that is best, is compared with the published cost and n packs with the published
 * quantity. Demand within a period is level in the textbook and at its beginning in the plan, so that half a period's
 * demand is kept all the time on top. Snyder and Shen 2019, Fundamentals of Supply Chain Theory, 2nd ed.: Example 3.1
 * (304.05 units, 68.4105 a year; 69.725 at 250), Example 3.6 (price falls for all units: 800, 978.60) and the like with
 * breaks at 200 and 500 (500, 472,900). Rossi 2021, Inventory Analytics: 252.98 units, 1,020.72.
 *
 * Prices that fall for further units only (their Example 3.7) cannot be written: a break holds for all packs. Orders
 * filled late in between (Example 3.8) and production at a rate fall within a period and cannot either.
 */
import { describe, expect, it } from 'vitest';
import type { PlanProblem } from '../../src/husbandry/plan/problem.ts';
import { leastCost } from '../support/plan/optimum.ts';

interface Economic {
  readonly order: number;
  readonly yearly: number;
  /** From so many units on each costs this, and this much to keep a year. */
  readonly prices: readonly { readonly from: number; readonly each: number; readonly keep: number }[];
  /** Units in a pack, and wanted in a period. */
  readonly pack: number;
}

const TOO_DEAR = 1e9;

/** Each price is a place of its own, since keeping costs a share of the price. */
function cycleOf({ order, yearly, prices, pack }: Economic, periods: number): PlanProblem {
  const years = pack / yearly;
  const one = (value: number) => Float64Array.of(value);
  return {
    periods,
    places: prices.map(({ from, keep }) => ({
      key: `from ${from}`,
      nodes: 1,
      passes: Array.from({ length: periods - 1 }, () => [one(1)]),
      comes: Array.from({ length: periods }, () => one(0)),
      keepCents: keep * years,
      room: null,
      floor: null,
    })),
    eaters: [
      {
        key: 'demand',
        urgency: 'ordinary',
        wanted: new Float64Array(periods).fill(pack),
        lateMost: new Float64Array(periods),
        lateCents: 0,
        missedCents: TOO_DEAR,
        fare: prices.map((_, place) => ({ place, node: 0, items: 1, cents: 0, cap: -1, ripeness: 1 })),
        caps: [],
        end: { cents: 0, weekly: 0, fare: [] },
      },
    ],
    parcels: [
      {
        key: 'order',
        period: 0,
        paid: 0,
        postageCents: order,
        labourCents: 0,
        minimumCents: 0,
        freeFromCents: null,
        packs: prices.map(({ from, each }, place) => ({
          key: `from ${from}`,
          place,
          breaks: [
            ...(from > pack ? [{ fromPacks: 1, cents: TOO_DEAR }] : []),
            { fromPacks: Math.max(1, from / pack), cents: each * pack },
          ],
          least: 0,
          most: periods,
          lineCents: 0,
          weightCents: 0,
          brings: one(pack),
        })),
      },
    ],
    starts: [],
    rests: [],
    pools: [],
    budget: new Float64Array(periods).fill(Number.POSITIVE_INFINITY),
    wholeUntil: periods,
  };
}

/** Cost a year of cycles of so many packs; what is kept is that of the price which so many packs reach. */
function yearlyCost(economic: Economic, packs: number): number {
  const { yearly, pack, prices } = economic;
  const keep = prices.filter(({ from }) => from <= packs * pack).at(-1)?.keep ?? 0;
  return (leastCost(cycleOf(economic, packs)) * yearly) / (packs * pack) + (keep * pack) / 2;
}

function best(economic: Economic, mostPacks: number): { units: number; cost: number } {
  const costs = Array.from({ length: mostPacks }, (_, i) => yearlyCost(economic, i + 1));
  const cost = Math.min(...costs);
  return { units: (costs.indexOf(cost) + 1) * economic.pack, cost };
}

const plain = { order: 8, yearly: 1300, prices: [{ from: 0, each: 0, keep: 0.225 }] };

describe('the economic order quantity', () => {
  it('is 304 of 304.05 units at 68.4105 a year (Example 3.1)', () => {
    const { units, cost } = best({ ...plain, pack: 16 }, 24);
    expect(units).toBe(304);
    expect(cost).toBeCloseTo(68.4105255, 5);
  });

  it('costs 69.725 a year at 250 (Example 3.1)', () => {
    expect(yearlyCost({ ...plain, pack: 50 }, 5)).toBeCloseTo(69.725, 9);
  });

  it('is 253 of 252.98 units at 1,020.72 a year (Rossi)', () => {
    const rossi = { order: 3.2, yearly: 2400, prices: [{ from: 0, each: 0.4, keep: 0.24 }], pack: 11 };
    const { units, cost } = best(rossi, 28);
    expect(units).toBe(253);
    expect(cost).toBeCloseTo(1020.72, 2);
  });
});

const discounted = (rate: number, breaks: readonly (readonly [number, number])[]) =>
  breaks.map(([from, each]) => ({ from, each, keep: rate * each }));

describe('with a price for all units', () => {
  it('is 800 units at 978.60 a year (Example 3.6)', () => {
    const prices = discounted(0.3, [
      [0, 0.75],
      [400, 0.72],
      [800, 0.68],
    ]);
    const { units, cost } = best({ order: 8, yearly: 1300, prices, pack: 50 }, 20);
    expect(units).toBe(800);
    expect(cost).toBeCloseTo(978.6, 6);
  });

  it('is 500 units at 472,900 a year', () => {
    const prices = discounted(0.2, [
      [0, 500],
      [200, 475],
      [500, 450],
    ]);
    const { units, cost } = best({ order: 200, yearly: 1000, prices, pack: 50 }, 14);
    expect(units).toBe(500);
    expect(cost).toBeCloseTo(472_900, 4);
  });
});
