/** A plan keeps to budgets and minimum orders whatever is asked for: what cannot be is left out, never planned. */
import { describe, expect, it } from 'vitest';
import {
  headMassBetween,
  type Offer,
  type Purse,
  postageCents,
  type Supplier,
} from '../../../src/husbandry/orders/index.ts';
import { makePlan, type PlanAnswer, type Wish } from '../../../src/husbandry/plan/index.ts';
import { marketWith, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { animalWith, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const spiderlings = Array.from({ length: 12 }, (_, i) =>
  animalWith({ code: `A${i}`, kind: 'grammostola-pulchra', gaugeMm: 22, lastTaken: TODAY - (i % 6) }),
);

interface Buying {
  readonly supplier?: Partial<Supplier>;
  readonly offer?: Partial<Offer>;
  readonly purse?: Partial<Purse>;
  readonly wish?: Wish;
}

/** Packs of 25 at 4.00, postage 5.90, on Mondays and Tuesdays. */
const planOf = ({ supplier = {}, offer = {}, purse = {}, wish }: Buying): Promise<PlanAnswer> =>
  makePlan(
    snapshotWith({
      animals: spiderlings,
      market: marketWith({
        suppliers: [supplierWith({ code: 'S1', ...supplier })],
        offers: [
          offerWith({
            ...{ code: 'F1', supplier: 'S1', species: 'acheta-domesticus', fromMm: 3, toMm: 5 },
            ...{ packHeads: 25, prices: [{ fromPacks: 1, packCents: 400 }], ...offer },
          }),
        ],
        purse: { currency: 'EUR', hourCents: 0, weekMostCents: null, ...purse },
      }),
      facts: {
        ...facts,
        policy: policyWith({ planJudgeReplicates: 40, planNeighbours: 60, planTries: 1 }),
      },
    }),
    { weeks: 6, wishes: wish ? [wish] : [], supposed: [], explained: false },
  );

const KEY = 'order:F1@2026-12-14';
const pin = (amount: number | null): Wish => ({ key: KEY, wish: 'pin', amount });
const orders = ({ lines }: PlanAnswer) => lines.filter((line) => line.what === 'order');
const weekOf = ({ periods }: PlanAnswer, day: number): number =>
  periods.findIndex(({ from, days }) => from <= day && day < from + days);

/** Goods and postage by week. */
function spentByWeek(plan: PlanAnswer): number[] {
  const paid = plan.periods.map(() => 0);
  const parcels = new Set<string>();
  for (const { actBy, parcel, cents } of orders(plan)) {
    paid[weekOf(plan, actBy)]! += cents + (parcels.has(parcel) ? 0 : 590);
    parcels.add(parcel);
  }
  return paid;
}

describe('a plan', () => {
  it('never spends more in a week than the purse has', async () => {
    const plan = await planOf({ purse: { weekMostCents: 1000 } });
    expect(orders(plan).length).toBeGreaterThan(0);
    expect(Math.max(...spentByWeek(plan))).toBeLessThanOrEqual(1000);
  });

  it('orders nothing where the least order costs more than a week has', async () => {
    const plan = await planOf({ supplier: { minimumCents: 1600 }, purse: { weekMostCents: 1500 } });
    expect(orders(plan)).toEqual([]);
  });

  it('leaves out a pin that is too small for an order: what is ordered then reaches the least order', async () => {
    const plan = await planOf({ supplier: { minimumCents: 1600 }, wish: pin(1) });
    const line = orders(plan).find(({ key }) => key === KEY);
    expect(line === undefined || line.cents >= 1600).toBe(true);
    expect(line?.pinned ?? false).toBe(false);
  });

  it('fills the parcel of a pin up to the least order where its amount is left to the plan', async () => {
    const plan = await planOf({ supplier: { minimumCents: 1600 }, wish: pin(null) });
    expect(orders(plan).find(({ key }) => key === KEY)?.packs).toBeGreaterThanOrEqual(4);
  });

  it('keeps to the purse where a pin asks for more', async () => {
    const plan = await planOf({ purse: { weekMostCents: 1500 }, wish: pin(10) });
    expect(Math.max(...spentByWeek(plan))).toBeLessThanOrEqual(1500);
  });

  it('plans no more packs than there are, whatever a pin asks for', async () => {
    const plan = await planOf({ offer: { mostPacks: 5 }, wish: pin(50) });
    expect(orders(plan).find(({ key }) => key === KEY)).toMatchObject({ packs: 5 });
  });

  it('buys nothing of a sender whose prey all comes dead', async () => {
    expect(orders(await planOf({ supplier: { lossShare: 1 } }))).toEqual([]);
  });

  it('pays the postage of a box by weight that its order will be told', async () => {
    const postage = { flatCents: 0, perKgCents: 100_000, freeFromCents: null };
    const offer = { fromMm: 1.5, toMm: 6 };
    const plan = await planOf({ supplier: { postage }, offer });
    const heads = orders(plan).reduce((sum, line) => sum + line.heads, 0);
    const perCubicMm = facts.species.get('acheta-domesticus')!.massPerCubicMm.value;
    const grams = (heads * headMassBetween(offer, perCubicMm).meanMg) / 1000;
    expect(heads).toBeGreaterThan(0);
    expect(plan.whole.cents.postage).toBeCloseTo(postageCents(postage, { goodsCents: 0, grams }), -1);
  });
});
