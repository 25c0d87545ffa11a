/** Lines of a plan: harvests fall within their stretch of days, and nothing is culled for room that will be eaten. */
import { describe, expect, it } from 'vitest';
import { makePlan, type PlanAnswer } from '../../../src/husbandry/plan/index.ts';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import { spokenDay } from '../../../src/husbandry/supply/index.ts';
import { marketWith, mixedMarket, offerWith, supplierWith } from '../../support/plan/markets.ts';
import {
  animalWith,
  binWith,
  countedBin,
  facts,
  mixedAnimals,
  mixedBins,
  policyWith,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const quickly = { planJudgeReplicates: 40, planQuickTrials: 60 };
const ask = { weeks: 6, wishes: [], supposed: [], explained: false, effort: 'quick' } as const;

describe('harvests', () => {
  it('are due within the days they are planned for, the first however few these are', async () => {
    const plan = await makePlan(
      snapshotWith({
        animals: mixedAnimals(150),
        bins: mixedBins(30),
        market: {
          ...mixedMarket,
          suppliers: [supplierWith({ code: 'S1' }), ...mixedMarket.suppliers.slice(1)],
        },
        facts: { ...facts, policy: policyWith(quickly) },
      }),
      ask,
    );
    const harvests = plan.lines.filter((line) => line.what === 'harvest');
    expect(plan.periods[0]).toEqual({ from: TODAY, days: 1 });
    expect(harvests.some(({ day }) => day === TODAY)).toBe(true);
    for (const { actBy, day } of harvests) {
      const period = plan.periods.find(({ from }) => from === day)!;
      expect(actBy).toBe(period.from + period.days - 1);
    }
  });
});

describe('culls for want of room', () => {
  const roomOf = (eaters: number) =>
    snapshotWith({
      animals: [
        animalWith({
          code: 'A1',
          kind: 'brachypelma-hamorii',
          gaugeMm: 30,
          count: eaters,
          lastTaken: TODAY - 20,
        }),
      ],
      bins: [
        binWith({
          ...{ code: 'B1', species: 'blaptica-dubia', role: 'colony', capacity: 700, keepAdults: true },
          events: [{ kind: 'counted', day: TODAY - 1, heads: 500, fromMm: null, toMm: null }],
        }),
      ],
      market: marketWith({}),
      facts: { ...facts, policy: policyWith(quickly) },
    });
  const culls = ({ lines }: PlanAnswer) => lines.filter((line) => line.what === 'cull');

  it('are told where hardly anybody eats of it', async () => {
    const [cull] = culls(await makePlan(roomOf(1), ask));
    expect(cull).toMatchObject({ bin: 'B1', why: 'room' });
  });

  it('are not told where the keeper will not have them, and what comes of that is', async () => {
    const wishes = [{ key: 'cull:B1:room', wish: 'forbid', amount: null }] as const;
    const [cull] = culls(await makePlan(roomOf(1), ask));
    const plan = await makePlan(roomOf(1), { ...ask, wishes });
    expect(culls(plan)).toEqual([]);
    expect(plan.obstacles.map(({ sentence }) => sentence)).toContain(
      `You forbade culls for room from B1: from ${spokenDay(cull!.day)} on it holds more than it has room for, so what lives in it grows and breeds more slowly.`,
    );
    const others = await makePlan(roomOf(1), { ...ask, wishes: [{ ...wishes[0], key: 'cull:B1:males' }] });
    expect(culls(others)).toHaveLength(culls(await makePlan(roomOf(1), ask)).length);
  });

  it('are not told of a box of what is bought as well: a second box is set up', async () => {
    const market = marketWith({
      suppliers: [supplierWith({ code: 'S1' })],
      offers: [offerWith({ code: 'F1', supplier: 'S1', species: 'acheta-domesticus', fromMm: 5, toMm: 9 })],
    });
    const box = countedBin('B1', 'acheta-domesticus', { heads: 600, fromMm: 4, toMm: 8 });
    const full = { ...roomOf(1), market, bins: [{ ...box, capacity: 500 }] };
    const [cull] = culls(await makePlan(full, ask));
    expect(cull).toMatchObject({ bin: 'B1', why: 'room', day: TODAY });
    const [pack] = layOut(full, ask).problem.parcels.flatMap(({ packs }) => packs);
    const wishes = [{ key: pack!.key, wish: 'pin', amount: 1 }] as const;
    const plan = await makePlan(full, { ...ask, wishes });
    expect(culls(plan)).toEqual([]);
    expect(plan.obstacles.map(({ sentence }) => sentence)).toContain(
      `B1 gets too full by ${spokenDay(TODAY)}: set up another box for some of it, and for what comes.`,
    );
  });

  it('are not told where what is harvested in time makes room', async () => {
    expect(culls(await makePlan(roomOf(10), ask))).toEqual([]);
  });
});
