/** Plans of a small shelf: they feed whom nothing fed, keep to the keeper's wishes and are the same every time. */
import { beforeAll, describe, expect, it } from 'vitest';
import { civilDate } from '../../../src/husbandry/calendar.ts';
import {
  makePlan,
  type PlanAnswer,
  type PlanProgress,
  type Wish,
} from '../../../src/husbandry/plan/index.ts';
import { marketWith, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { animalWith, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const spiderlings = Array.from({ length: 12 }, (_, i) =>
  animalWith({ code: `A${i}`, kind: 'grammostola-pulchra', gaugeMm: 22, lastTaken: TODAY - (i % 6) }),
);

const parcels = supplierWith({ code: 'S1' });
const shop = supplierWith({
  code: 'S2',
  kind: 'shop',
  transitDays: 0,
  cutOffDays: 0,
  dispatchWeekdays: [true, true, true, true, true, true, false],
  postage: { flatCents: 0, perKgCents: 0, freeFromCents: null },
});
const small = { species: 'acheta-domesticus', fromMm: 3, toMm: 5 } as const;
const market = marketWith({
  suppliers: [parcels, shop],
  offers: [
    offerWith({
      code: 'F1',
      supplier: 'S1',
      ...small,
      packHeads: 100,
      prices: [{ fromPacks: 1, packCents: 400 }],
    }),
    offerWith({
      code: 'F2',
      supplier: 'S2',
      ...small,
      packHeads: 25,
      prices: [{ fromPacks: 1, packCents: 350 }],
    }),
  ],
});
const room = snapshotWith({
  animals: spiderlings,
  market,
  facts: {
    ...facts,
    policy: policyWith({ planJudgeReplicates: 60, planNeighbours: 600, planQuickTrials: 600 }),
  },
});
const asked = { weeks: 8, wishes: [], supposed: [] } as const;
const withWish = (wish: Wish): Promise<PlanAnswer> =>
  makePlan(room, { ...asked, wishes: [wish], explained: false, effort: 'quick' });
const orders = ({ lines }: PlanAnswer) => lines.filter((line) => line.what === 'order');

describe('the plan of twelve spiderlings without a cricket in the house', () => {
  const told: PlanProgress[] = [];
  let plan: PlanAnswer;
  beforeAll(async () => {
    plan = await makePlan(room, asked, (progress) => told.push(progress));
  }, 60_000);

  it('buys crickets they can eat and meets its target', () => {
    expect(orders(plan).length).toBeGreaterThan(0);
    expect(plan.whole.service[0]).toMatchObject({ urgency: 'fragile', met: true });
    expect(plan.whole.service.every(({ met }) => met)).toBe(true);
    expect(plan.whole.heldDays).toBe(plan.periods.reduce((days, period) => days + period.days, 0));
    expect(plan.obstacles.filter(({ kind }) => kind !== 'lead time')).toEqual([]);
  });

  it('costs what its lines and parcels cost', () => {
    const goods = orders(plan).reduce((sum, { cents }) => sum + cents, 0);
    const sent = new Set(orders(plan).flatMap((line) => (line.supplier === 'S1' ? [line.parcel] : [])));
    expect(plan.whole.cents.goods).toBe(goods);
    expect(plan.whole.cents.postage).toBe(sent.size * parcels.postage.flatCents);
  });

  it('orders no later than the supplier takes orders, and eats nothing before it is there', () => {
    for (const { actBy, sent, comes, supplier } of orders(plan)) {
      expect(actBy).toBeGreaterThanOrEqual(TODAY);
      expect([sent - actBy, comes - sent]).toEqual(supplier === 'S1' ? [1, 2] : [0, 0]);
    }
    for (const { reason, comes } of orders(plan))
      for (const { from, to } of reason?.feeds ?? []) {
        expect(from).toBeGreaterThanOrEqual(comes);
        expect(to).toBeGreaterThanOrEqual(from);
      }
  });

  it('says what is missed without its first order, in more meals than with it', () => {
    const first = orders(plan)[0];
    expect(first?.reason?.without.missedMeals.low).toBeGreaterThan(1);
    expect(first?.reason?.feeds[0]?.name).toBe('tarantula spiderlings');
    expect(first?.reason?.makesLittleDifference).toBe(false);
  });

  it('accounts for every item wanted', () => {
    for (const { wanted, eaten, late, missed } of plan.cover)
      wanted.forEach((items, t) => {
        const given = (eaten[t] as number) + (late[t] as number) + (missed[t] as number);
        expect(given).toBeCloseTo(items + (t > 0 ? (late[t - 1] as number) : 0), 6);
      });
  });

  it('tells how far it is, and never goes back', () => {
    const shares = told.map(({ share }) => share);
    expect(shares.length).toBeGreaterThan(2);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });

  it('proves how far from the best the programme may be', () => {
    expect(plan.made).toBe('programme');
    expect(plan.gap).toBeGreaterThanOrEqual(0);
    expect(plan.gap).toBeLessThan(0.02);
  });
});

describe('wishes', () => {
  it('an empty house without a room has nothing to buy for', async () => {
    const empty = snapshotWith({ rooms: [], bins: [], animals: [], market });
    expect((await makePlan(empty, asked)).lines).toEqual([]);
  });

  it('a line that is forbidden is not in the plan', async () => {
    const free = await makePlan(room, { ...asked, explained: false, effort: 'quick' });
    const key = orders(free)[0]?.key as string;
    const plan = await withWish({ key, wish: 'forbid', amount: null });
    expect(plan.lines.map((line) => line.key)).not.toContain(key);
    const instead = await makePlan(room, {
      ...asked,
      supposed: [{ what: 'without', key }],
      explained: false,
      effort: 'quick',
    });
    expect(instead.lines).toEqual(plan.lines);
  });

  it('what is forbidden is named where it would feed somebody, and not where nobody eats it', async () => {
    const large = offerWith({
      code: 'F3',
      supplier: 'S1',
      species: 'acheta-domesticus',
      fromMm: 18,
      toMm: 20,
      packHeads: 50,
      prices: [{ fromPacks: 1, packCents: 500 }],
    });
    const withLarge = { ...room, market: { ...market, offers: [...market.offers, large] } };
    const days = Array.from({ length: 7 * asked.weeks }, (_, day) => civilDate(TODAY + day));
    const barred = async (...offers: string[]) => {
      const wishes = offers.flatMap((offer) =>
        days.map((day): Wish => ({ key: `order:${offer}@${day}`, wish: 'forbid', amount: null })),
      );
      const { obstacles } = await makePlan(withLarge, {
        ...asked,
        wishes,
        explained: false,
        effort: 'quick',
      });
      return obstacles.filter(({ kind }) => kind === 'forbidden');
    };
    expect(await barred('F1', 'F2')).toHaveLength(1);
    expect(await barred('F3')).toEqual([]);
  });

  it('a line that is pinned is in the plan with the packs asked for', async () => {
    const plan = await withWish({ key: 'order:F1@2026-12-14', wish: 'pin', amount: 3 });
    expect(orders(plan).find(({ key }) => key === 'order:F1@2026-12-14')).toMatchObject({
      packs: 3,
      pinned: true,
    });
  });
});

describe('wishes against each other', () => {
  const pins = ['order:F1@2026-12-14', 'order:F2@2026-12-15'].map(
    (key): Wish => ({ key, wish: 'pin', amount: 4 }),
  );

  it('two pins dearer than a week may be are named and left out', async () => {
    const purse = { currency: 'EUR', hourCents: 0, weekMostCents: 3000 };
    const poor = { ...room, market: { ...market, purse } };
    const plan = await makePlan(poor, { ...asked, wishes: pins, explained: false, effort: 'quick' });
    expect(plan.obstacles[0]).toMatchObject({ kind: 'budget' });
    expect(plan.obstacles[0]?.sentence).toMatch(
      /4 packs of house crickets.*Mon 14 Dec and 4 packs of house crickets.*Tue 15 Dec/,
    );
    expect(orders(plan).some(({ pinned }) => pinned)).toBe(false);
  });

  it('a pin below the least order is named and left out where nothing else may go with it', async () => {
    const supplier = { ...parcels, minimumCents: 5000 };
    const strict = { ...room, market: { ...market, suppliers: [supplier, shop] } };
    const wishes: Wish[] = [{ key: 'order:F1@2026-12-14', wish: 'pin', amount: 2 }];
    const plan = await makePlan(strict, { ...asked, wishes, explained: false, effort: 'quick' });
    expect(plan.obstacles[0]?.sentence).toContain('below the least order of S1');
  });
});

it('the same room gives the same quick plan', async () => {
  const quick = { ...asked, effort: 'quick' } as const;
  expect(await makePlan(room, quick)).toEqual(await makePlan(room, quick));
});

it('an empty house plans nothing', async () => {
  const plan = await makePlan(snapshotWith({ market }), { ...asked, effort: 'quick' });
  expect(plan).toMatchObject({ lines: [], obstacles: [], whole: { cents: { total: 0 } } });
});

it('a house to which nobody sells says so', async () => {
  const plan = await makePlan(snapshotWith({ animals: spiderlings }), { ...asked, effort: 'quick' });
  expect(plan.lines).toEqual([]);
  expect(plan.obstacles.map(({ kind }) => kind)).toContain('no offer');
});
