/** What may be spent in a week: Sunday to Saturday, whatever day the plan is made and parcels come. */
import { expect, it } from 'vitest';
import { makePlan } from '../../../src/husbandry/plan/index.ts';
import { periodsOf } from '../../../src/husbandry/plan/periods.ts';
import { weekBudget } from '../../../src/husbandry/plan/week-budget.ts';
import { marketWith, mixedMarket, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { facts, mixedAnimals, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const market = { ...mixedMarket, purse: { ...mixedMarket.purse, weekMostCents: 3000 } };
const periods = periodsOf({ today: TODAY, weeks: 4, market });
const budget = (...spent: { day: number; cents: number }[]) => [...weekBudget(periods, { ...market, spent })];
/** Today is a Tuesday. */
const SUNDAY = TODAY - 2;

it('is the same every week where nothing was ordered', () => {
  const all = budget();
  expect(all.length).toBeGreaterThanOrEqual(4);
  expect(new Set(all)).toEqual(new Set([3000]));
});

it('has less in this week where something was ordered in it, not where it was last week', () => {
  expect(budget({ day: SUNDAY, cents: 1200 }, { day: TODAY, cents: 300 }).slice(0, 2)).toEqual([1500, 3000]);
  expect(budget({ day: SUNDAY - 1, cents: 1200 })[0]).toBe(3000);
});

it('is nothing, and never less, where all is gone; and has no bound where none is set', () => {
  expect(budget({ day: TODAY, cents: 9000 })[0]).toBe(0);
  const free = {
    ...market,
    purse: { ...market.purse, weekMostCents: null },
    spent: [{ day: TODAY, cents: 900 }],
  };
  expect(weekBudget(periods, free)[0]).toBe(Number.POSITIVE_INFINITY);
});

it('is kept in every week, also where the first stretch of the plan is a day and money went yesterday', async () => {
  const policy = policyWith({ planReplicates: 40, planJudgeReplicates: 20, planJudgeLeast: 10 });
  for (const gone of [0, 2900]) {
    const tight = marketWith({
      purse: { currency: 'EUR', hourCents: 0, weekMostCents: 3000 },
      spent: [{ day: TODAY - 1, cents: gone }],
      suppliers: [
        supplierWith({
          code: 'S1',
          transitDays: 1,
          cutOffDays: 0,
          dispatchWeekdays: [true, true, true, false, false, false, false],
        }),
      ],
      offers: [
        offerWith({ code: 'O3', supplier: 'S1', species: 'acheta-domesticus', fromMm: 5, toMm: 9 }),
        offerWith({ code: 'O4', supplier: 'S1', species: 'acheta-domesticus', fromMm: 12, toMm: 18 }),
      ],
    });
    const room = { animals: mixedAnimals(120), bins: [], market: tight, facts: { ...facts, policy } };
    const question = { weeks: 6, wishes: [], supposed: [], effort: 'quick', explained: false } as const;
    const { lines, periods: stretches } = await makePlan(snapshotWith({ seed: 5, ...room }), question);
    expect(stretches[0]!.days).toBeLessThan(3);
    const postage = tight.suppliers[0]!.postage.flatCents;
    const spent = new Map<number, number>([[0, gone]]);
    const parcels = new Set<string>();
    for (const line of lines) {
      if (line.what !== 'order') continue;
      const week = Math.floor((line.actBy - SUNDAY) / 7);
      const post = parcels.has(line.parcel) ? 0 : postage;
      parcels.add(line.parcel);
      spent.set(week, (spent.get(week) ?? 0) + line.cents + post);
    }
    expect(Math.max(...spent.values())).toBeLessThanOrEqual(3000);
    expect([...spent.values()].filter((cents) => cents > 1500).length).toBeGreaterThan(1);
  }
}, 120_000);
