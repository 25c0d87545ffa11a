/** What a plan says of its orders: whom they feed from when, and what one head that is eaten costs. */
import { expect, it } from 'vitest';
import { civilDate } from '../../../src/husbandry/calendar.ts';
import type { Market } from '../../../src/husbandry/orders/index.ts';
import { makePlan, type PlanAnswer, type Wish } from '../../../src/husbandry/plan/index.ts';
import { marketWith, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { facts, mixedAnimals, policyWith, snapshotWith } from '../../support/room.ts';

const policy = policyWith({ planReplicates: 40, planJudgeReplicates: 20, planJudgeLeast: 10 });

const planned = (market: Market, wishes: Wish[] = []): Promise<PlanAnswer> =>
  makePlan(
    snapshotWith({ seed: 5, animals: mixedAnimals(40), bins: [], market, facts: { ...facts, policy } }),
    { weeks: 6, wishes, supposed: [], effort: 'quick' },
  );
const ordersOf = ({ lines }: PlanAnswer) => lines.flatMap((line) => (line.what === 'order' ? [line] : []));

it('feeds nobody before it comes, though weeks are those of another supplier', async () => {
  const [S, M, T, W, ...rest] = [false, false, false, true, false, false, false];
  const market = marketWith({
    suppliers: [
      supplierWith({ code: 'S1', minimumCents: 100_000 }),
      supplierWith({ code: 'S2', transitDays: 2, dispatchWeekdays: [S!, M!, T!, W!, ...rest] }),
    ],
    offers: [
      offerWith({ code: 'O1', supplier: 'S1', species: 'blaptica-dubia', fromMm: 8, toMm: 15 }),
      offerWith({ code: 'O2', supplier: 'S1', species: 'blaptica-dubia', fromMm: 20, toMm: 25 }),
      offerWith({ code: 'O3', supplier: 'S2', species: 'acheta-domesticus', fromMm: 5, toMm: 9 }),
    ],
  });
  const plan = await planned(market);
  const orders = ordersOf(plan);
  const middles = orders.filter(({ comes }) => plan.periods.every(({ from }) => from !== comes));
  expect(middles.length).toBeGreaterThan(0);
  for (const { comes, reason } of orders)
    for (const { from, to } of reason!.feeds) {
      expect(from).toBeGreaterThanOrEqual(comes);
      expect(to).toBeGreaterThanOrEqual(from);
    }
}, 60_000);

/** Two lines of one parcel, whose prices are 19 and 5. */
const twoLines = async (freeFromCents: number | null) => {
  const market = marketWith({
    suppliers: [supplierWith({ code: 'S1', postage: { flatCents: 690, perKgCents: 0, freeFromCents } })],
    offers: [
      offerWith({
        code: 'O6',
        supplier: 'S1',
        ...{ species: 'gryllus-bimaculatus', fromMm: 18, toMm: 26, packHeads: 60 },
        prices: [{ fromPacks: 1, packCents: 950 }],
      }),
      offerWith({
        code: 'O1',
        supplier: 'S1',
        ...{ species: 'acheta-domesticus', fromMm: 5, toMm: 9, packHeads: 100 },
        prices: [{ fromPacks: 1, packCents: 500 }],
      }),
    ],
  });
  const first = ordersOf(await planned(market))[0]!;
  const pinned = (offer: string, amount: number): Wish => ({
    key: `order:${offer}@${civilDate(first.sent)}`,
    wish: 'pin',
    amount,
  });
  const plan = await planned(market, [pinned('O6', 2), pinned('O1', 1)]);
  return ordersOf(plan).filter(({ parcel }) => parcel === first.parcel);
};

it('shares its postage by price among the lines of a parcel; a line that makes it free bears none', async () => {
  const [paid, free] = [await twoLines(null), await twoLines(2400)];
  for (const lines of [paid, free])
    expect(lines.map(({ cents }) => cents).toSorted((a, b) => a - b)).toEqual([500, 1900]);
  for (const { heads, reason } of [...paid, ...free]) {
    const eaten = reason!.feeds.reduce((sum, fed) => sum + fed.heads, 0);
    expect(eaten).toBeGreaterThan(5);
    expect(eaten).toBeLessThanOrEqual(1.1 * heads);
  }
  const priceOf = (lines: typeof paid) => lines.find(({ offer }) => offer === 'O1')!.reason!.centsPerEaten!;
  // No head more can be eaten than comes, a tenth over the count; and most of them are.
  expect(priceOf(free)).toBeGreaterThan(500 / 110);
  expect(priceOf(free)).toBeLessThan(500 / 50);
  expect(priceOf(paid) / priceOf(free)).toBeCloseTo((2400 + 690) / 2400, 1);
}, 120_000);

it('says no price of what is mostly eaten after the plan ends', async () => {
  const orders = ordersOf(
    await planned(
      marketWith({
        suppliers: [supplierWith({ code: 'S1' })],
        offers: [offerWith({ code: 'O1', supplier: 'S1', species: 'blaptica-dubia', fromMm: 10, toMm: 20 })],
      }),
    ),
  );
  const prices = orders.flatMap(({ reason }) => reason!.centsPerEaten ?? []);
  expect(prices.length).toBeGreaterThan(0);
  expect(Math.max(...prices) / Math.min(...prices)).toBeLessThan(2.5);
}, 60_000);
