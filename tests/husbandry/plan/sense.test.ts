/** Whole rooms: what must not change a plan changes nothing, and what helps never makes it dearer. */
import { describe, expect, it } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import type { Market } from '../../../src/husbandry/orders/index.ts';
import type { PlanEater, PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { mixedMarket, offerWith } from '../../support/plan/markets.ts';
import { bestPlan, buyingRoom, eaters, laidOut, stock } from '../../support/plan/planned.ts';
import { facts, TODAY } from '../../support/room.ts';

const WEEKS = 6;
const WHOLE = 2;
/** What the solver may leave, as a share of the cost. */
const SAME = 1e-6;

const planOf = (over: Parameters<typeof buyingRoom>[0]) =>
  bestPlan(laidOut(buyingRoom(over), WEEKS).problem, WHOLE);

const plain = planOf({});

const sameCost = (cost: number, other: number): void =>
  expect(Math.abs(cost - other)).toBeLessThan(SAME * (1 + Math.abs(other)));

const noDearer = (cost: number, than: number, within = SAME): void =>
  expect(cost).toBeLessThanOrEqual(than + within * (1 + Math.abs(than)));

/** Decisions of the weeks in whole packs. */
const near = ({ bought }: { bought: Readonly<Record<string, number>> }): [string, number][] =>
  Object.entries(bought).filter(([, packs]) => Number.isInteger(packs));

describe('a plan', () => {
  it('buys something in the room these tests speak of', () => {
    expect(near(plain).length).toBeGreaterThan(0);
  });

  it('is not changed by an offer that another one beats', () => {
    const beaten = offerWith({
      ...mixedMarket.offers[1]!,
      code: 'O2b',
      prices: [{ fromPacks: 1, packCents: 900 }],
    });
    const plan = planOf({ market: { ...mixedMarket, offers: [...mixedMarket.offers, beaten] } });
    expect(near(plan)).toEqual(near(plain));
    expect(Object.keys(plan.bought).filter((key) => key.includes('O2b'))).toEqual([]);
    sameCost(plan.cost, plain.cost);
  });

  it('is not changed by another currency', () => {
    const times = (cents: number) => cents * 100;
    const market: Market = {
      ...mixedMarket,
      suppliers: mixedMarket.suppliers.map((supplier) => ({
        ...supplier,
        minimumCents: times(supplier.minimumCents),
        postage: {
          flatCents: times(supplier.postage.flatCents),
          perKgCents: times(supplier.postage.perKgCents),
          freeFromCents:
            supplier.postage.freeFromCents === null ? null : times(supplier.postage.freeFromCents),
        },
      })),
      offers: mixedMarket.offers.map((offer) => ({
        ...offer,
        prices: offer.prices.map(({ fromPacks, packCents }) => ({ fromPacks, packCents: times(packCents) })),
      })),
    };
    const plan = planOf({ market });
    expect(near(plan)).toEqual(near(plain));
    sameCost(plan.cost, times(plain.cost));
  });

  it('is the same 52 weeks later', () => {
    const later = 364;
    const plan = planOf({
      today: TODAY + later,
      animals: eaters.map((animal) => laterAnimal(animal, later)),
      bins: stock(1).map((bin) => laterBin(bin, later)),
    });
    const withoutDay = (bought: [string, number][]) =>
      bought.map(([key, packs]) => [key.split('@')[0], packs]);
    expect(withoutDay(near(plan))).toEqual(withoutDay(near(plain)));
    sameCost(plan.cost, plain.cost);
  });

  it('is the same for a bin in two halves', () => {
    const bins = stock(1);
    const [first, second, ...rest] = bins as [Bin, Bin];
    const half = (code: string): Bin => ({
      ...second,
      code,
      events: second.events.map((event) =>
        event.kind === 'counted' ? { ...event, heads: event.heads / 2 } : event,
      ),
    });
    const plan = planOf({ bins: [first, half('B2'), half('B2b'), ...rest] });
    expect(near(plan)).toEqual(near(plain));
    sameCost(plan.cost, plain.cost);
  });

  it('is the same whatever the order of animals, bins and offers', () => {
    const plan = planOf({
      animals: [...eaters].reverse(),
      bins: stock(1).reverse(),
      market: {
        ...mixedMarket,
        offers: [...mixedMarket.offers].reverse(),
        suppliers: [...mixedMarket.suppliers].reverse(),
      },
    });
    expect(Object.fromEntries(near(plan))).toEqual(Object.fromEntries(near(plain)));
    sameCost(plan.cost, plain.cost);
  });
});

function laterAnimal(animal: Animal, days: number): Animal {
  const later = (day: number | null) => (day === null ? null : day + days);
  return { ...animal, lastTaken: later(animal.lastTaken), lastOffered: later(animal.lastOffered) };
}

const laterBin = (bin: Bin, days: number): Bin => ({
  ...bin,
  events: bin.events.map((event) => ({ ...event, day: event.day + days })),
});

describe('the best plan is never dearer', () => {
  it('with more stock', () => {
    const more = planOf({ bins: stock(2) });
    const most = planOf({ bins: stock(8) });
    noDearer(more.cost, plain.cost);
    noDearer(most.cost, more.cost);
  });

  it('with more money to spend in a week', () => {
    const costs = [0, 400, 800, null].map((weekMostCents) => {
      return planOf({ market: { ...mixedMarket, purse: { ...mixedMarket.purse, weekMostCents } } }).cost;
    });
    expect(costs[0]).toBeGreaterThan(costs.at(-1)!);
    costs.slice(1).forEach((cost, i) => {
      noDearer(cost, costs[i]!);
    });
  });

  it('where a supplier needs the order less long before', () => {
    const costs = [8, 4, 0].map((cutOffDays) => {
      const suppliers = mixedMarket.suppliers.map((supplier) =>
        supplier.code === 'S2' ? { ...supplier, cutOffDays } : supplier,
      );
      // Without ready stock: how much is to stand ready depends on how soon more can come.
      const { laid } = laidOut(buyingRoom({ bins: [], market: { ...mixedMarket, suppliers } }), WEEKS);
      return bestPlan(laid.problem, WHOLE).cost;
    });
    expect(costs[0]).toBeGreaterThan(costs.at(-1)!);
    costs.slice(1).forEach((cost, i) => {
      // What is left at the end is worth what it could be had for, which is a little less where more can come.
      noDearer(cost, costs[i]!, facts.policy.planGap.value);
    });
  });
});

const NOTHING_AFTER: PlanEater['end'] = { cents: 0, weekly: 0, fare: [] };

/** A room whose animals want something in one period alone, and nothing after the last. */
function wantingOnlyIn(period: number, problem: PlanProblem): PlanProblem {
  const only = (eater: PlanEater): PlanEater => ({
    ...eater,
    wanted: eater.wanted.map((items, t) => (t === period ? items : 0)),
    lateMost: eater.lateMost.map((items, t) => (t === period ? items : 0)),
    end: NOTHING_AFTER,
  });
  return { ...problem, eaters: problem.eaters.map(only), pools: [] };
}

describe('what is wanted in week eight alone', () => {
  const { problem } = laidOut(buyingRoom({ bins: [] }), 8);
  const week = 7;
  const only = wantingOnlyIn(week, problem);
  const plan = bestPlan(only, 8);

  it('is bought, and nothing is eaten before', () => {
    expect(Object.keys(plan.bought).length).toBeGreaterThan(0);
    const eaten = plan.flows.use.flatMap((weeks) => weeks.map((row) => row.reduce((a, b) => a + b, 0)));
    const early = eaten.filter((_, i) => i % 8 < week);
    expect(Math.max(...early)).toBeLessThan(1e-6);
  });

  it('does not stand about before, unless it has to grow first', () => {
    const steady = only.places.map((place) => ({
      ...place,
      passes: place.passes.map((step) => step.map((row, to) => row.map((_, from) => Number(to === from)))),
    }));
    const offerOf = (key: string) => key.split('@')[0]!;
    const brought = new Map(
      only.parcels.flatMap(({ packs }) => packs.map(({ key, brings }) => [offerOf(key), brings])),
    );
    const parcels = only.parcels.map((parcel) => ({
      ...parcel,
      packs: parcel.packs.map((pack) => ({ ...pack, brings: brought.get(offerOf(pack.key))! })),
    }));
    const { packs, flows } = bestPlan({ ...only, places: steady, parcels }, 8);
    const early = problem.parcels.filter(
      ({ period }, i) => period < week && packs[i]!.some((count) => count > 1e-6),
    );
    expect(early).toEqual([]);
    const left = flows.left.flatMap((weeks) => weeks.slice(0, week).map((heads) => Math.max(...heads)));
    expect(Math.max(...left)).toBeLessThan(1e-6);
  });
});

describe('where nobody wants anything', () => {
  it('nothing is bought or started', () => {
    const { problem } = laidOut(buyingRoom({ animals: [], bins: [] }), WEEKS);
    expect(bestPlan(problem, WEEKS).bought).toEqual({});
    const nothing = wantingOnlyIn(-1, laidOut(buyingRoom(), WEEKS).problem);
    const plan = bestPlan(nothing, WEEKS);
    expect(plan.bought).toEqual({});
    expect(plan.cups.every((cups) => cups < 1e-6)).toBe(true);
  });

  it('nothing comes in the last weeks where nothing is wanted in them', () => {
    const { problem } = laidOut(buyingRoom(), WEEKS);
    const until = 3;
    const early = problem.eaters.map((eater) => ({
      ...eater,
      wanted: eater.wanted.map((items, t) => (t < until ? items : 0)),
      lateMost: eater.lateMost.map((items, t) => (t < until ? items : 0)),
      end: NOTHING_AFTER,
    }));
    const plan = bestPlan({ ...problem, eaters: early, pools: [] }, WEEKS);
    const late = problem.parcels.filter(
      ({ period }, i) => period >= until && plan.packs[i]!.some((n) => n > 1e-6),
    );
    expect(late).toEqual([]);
  });

  it('the end alone pays for no order', () => {
    const { problem } = laidOut(buyingRoom(), WEEKS);
    const within = { ...problem, eaters: problem.eaters.map((eater) => ({ ...eater, end: NOTHING_AFTER })) };
    const chosen = bestPlan(problem, WHOLE);
    problem.parcels.forEach((parcel, i) => {
      parcel.packs.forEach((pack, j) => {
        if (chosen.packs[i]![j]! < 1e-6) return;
        const served = useCost(within, chosen.packs);
        const without = chosen.packs.map((row, at) => row.map((n, to) => (at === i && to === j ? 0 : n)));
        expect(useCost(within, without) - served, pack.key).toBeGreaterThan(1e-6);
      });
    });
  });
});

/** What the best use of these packs costs beside their price. */
function useCost(problem: PlanProblem, packs: readonly (readonly number[])[]): number {
  const parcels = problem.parcels.map((parcel, i) => ({
    ...parcel,
    postageCents: 0,
    labourCents: 0,
    minimumCents: 0,
    freeFromCents: null,
    packs: parcel.packs.map((pack, j) => ({
      ...pack,
      breaks: [{ fromPacks: 1, cents: 0 }],
      weightCents: 0,
      least: packs[i]![j]!,
      most: Math.max(packs[i]![j]!, 1e-9),
    })),
  }));
  return bestPlan({ ...problem, parcels }, 0).cost;
}
