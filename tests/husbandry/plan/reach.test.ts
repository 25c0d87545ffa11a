/** A room that nobody can send anything in time is told so, and its missed meals are counted. */
import { describe, expect, it } from 'vitest';
import type { Market, Supplier } from '../../../src/husbandry/orders/index.ts';
import { makePlan } from '../../../src/husbandry/plan/index.ts';
import { marketWith, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { animalWith, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const planOf = (weeks: number, supplier: Partial<Supplier>, over: Partial<Market> = {}) =>
  makePlan(
    snapshotWith({
      animals: [
        animalWith({ code: 'A1', kind: 'grammostola-pulchra', gaugeMm: 22, count: 12, lastTaken: TODAY - 5 }),
      ],
      market: marketWith({
        suppliers: [supplierWith({ code: 'S1', coldBelowC: 0, ...supplier })],
        offers: [offerWith({ code: 'F1', supplier: 'S1', species: 'acheta-domesticus', fromMm: 3, toMm: 5 })],
        ...over,
      }),
      facts: { ...facts, policy: policyWith({ planJudgeReplicates: 40, planQuickTrials: 60 }) },
    }),
    { weeks, wishes: [], supposed: [], effort: 'quick' },
  );

describe('a plan', () => {
  it('counts the meals missed until the first parcel, where that comes after the weeks lived through', async () => {
    const { whole, obstacles } = await planOf(12, { holidays: [{ from: TODAY, to: TODAY + 49 }] });
    expect(whole.service).toHaveLength(1);
    expect(whole.service[0]).toMatchObject({ urgency: 'fragile', met: false });
    expect(obstacles.map(({ kind }) => kind)).toContain('lead time');
  });

  it('says that no parcel can come while the weather holds them all', async () => {
    const frost = { from: TODAY, to: TODAY + 60, tempC: -9 };
    const { lines, obstacles } = await planOf(6, {}, { weather: [frost] });
    expect(lines).toEqual([]);
    expect(obstacles).toEqual([
      {
        kind: 'lead time',
        sentence:
          'Nothing that is ordered can be here within these weeks: the days on which it is sent, holidays or the weather keep it.',
        groups: [],
      },
    ]);
  });

  it('counts as bought what comes within the weeks whose meals it counts', async () => {
    const { lines, whole, periods } = await planOf(12, {});
    const held = periods.slice(0, 6).reduce((sum, { days }) => sum + days, 0);
    const orders = lines.filter((line) => line.what === 'order');
    const heads = (from: number, to: number) =>
      orders.filter(({ comes }) => from <= comes && comes < to).reduce((sum, line) => sum + line.heads, 0);
    expect(whole.heldDays).toBe(held);
    expect(whole.bought).toBe(heads(TODAY, TODAY + held));
    expect(heads(TODAY + held, TODAY + 84)).toBeGreaterThan(0);
  });

  it('blames the purse only where that forbids another pack', async () => {
    const late = { holidays: [{ from: TODAY, to: TODAY + 21 }] };
    const kindsOf = async (weekMostCents: number) => {
      const purse = { currency: 'EUR', hourCents: 0, weekMostCents };
      return (await planOf(6, late, { purse })).obstacles.map(({ kind }) => kind);
    };
    expect(await kindsOf(1_000_000)).toEqual(['lead time']);
    expect(await kindsOf(600)).toEqual(['lead time', 'budget']);
  });
});
