/** What may be spent in seven days, over the periods of a plan: what was ordered lately counts in the first. */
import { expect, it } from 'vitest';
import { budgetOver, periodsOf } from '../../../src/husbandry/plan/periods.ts';
import { mixedMarket } from '../../support/plan/markets.ts';
import { TODAY } from '../../support/room.ts';

const market = { ...mixedMarket, purse: { ...mixedMarket.purse, weekMostCents: 3000 } };
const periods = periodsOf({ today: TODAY, weeks: 4, market });
const [first] = periods;
const end = first!.from + first!.days;
const budget = (...spent: { day: number; cents: number }[]) => [...budgetOver(periods, { ...market, spent })];

it('is the same every week where nothing was ordered', () => {
  expect(budget()).toEqual([3000, 3000, 3000, 3000]);
});

it('has less in the first where something was, within the seven days that end with it', () => {
  expect(budget({ day: end - 7, cents: 1200 }, { day: TODAY, cents: 300 })).toEqual([1500, 3000, 3000, 3000]);
  expect(budget({ day: end - 8, cents: 1200 })).toEqual([3000, 3000, 3000, 3000]);
});

it('is nothing, and never less, where all is gone; and has no bound where none is set', () => {
  expect(budget({ day: TODAY, cents: 9000 })[0]).toBe(0);
  const free = {
    ...market,
    purse: { ...market.purse, weekMostCents: null },
    spent: [{ day: TODAY, cents: 900 }],
  };
  expect(budgetOver(periods, free)[0]).toBe(Number.POSITIVE_INFINITY);
});
