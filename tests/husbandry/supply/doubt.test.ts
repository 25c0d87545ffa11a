/** What is not known is drawn, once per replicate: counts, parcels; and danger outranks what was missed. */
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import {
  animalWith,
  binWith,
  certainPolicy,
  countedBin,
  facts,
  policyWith,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const withPolicy = (policy: typeof certainPolicy) => ({ ...facts, policy });
const certainBut = (values: Parameters<typeof policyWith>[0]) =>
  policyWith({
    ...Object.fromEntries(
      Object.entries(certainPolicy)
        .map(([name, { value }]) => [name, value])
        .filter(([, value]) => typeof value === 'number'),
    ),
    ...values,
  });

describe('a count', () => {
  it('in doubt makes a sure week unsure: between what a low and a high count would say', () => {
    const animals = Array.from({ length: 8 }, (_, i) =>
      animalWith({ code: `S${i}`, kind: 'brachypelma-hamorii', gaugeMm: 13, lastTaken: TODAY - 1 - i }),
    );
    const chance = (heads: number, countCv: number) => {
      const policy = certainBut({ countCv, replicates: 300 });
      const bins = [countedBin('B1', 'acheta-domesticus', { heads, fromMm: 3, toMm: 4 })];
      return sundayCheck(snapshotWith({ animals, bins, facts: withPolicy(policy) })).nothingMissed.chance;
    };
    const [few, plenty] = [chance(5, 0), chance(25, 0)];
    expect(few).toBeLessThan(0.2);
    expect(plenty).toBeGreaterThan(0.9);
    expect(chance(25, 0.8)).toBeLessThan(plenty - 0.1);
    expect(chance(5, 0.8)).toBeGreaterThan(few);
  });
});

describe('a parcel', () => {
  const arrivedBy = (days: number, { late, replicates }: { late: number; replicates: number }) => {
    const snapshot = snapshotWith({
      bins: [binWith({ code: 'B1', species: 'tenebrio-molitor' })],
      deliveries: [
        {
          code: 'D1',
          species: 'tenebrio-molitor',
          bin: 'B1',
          lot: { heads: 100, fromMm: 15, toMm: 20 },
          day: TODAY + 3,
        },
      ],
      facts: withPolicy(certainBut({ deliveryLateChance: late, replicates })),
    });
    const { start, arrived } = judge(snapshot, { days }).larder.totals;
    return ((start[0] as number) + (arrived[0] as number)) / replicates / 100;
  };

  it('is there on its day nine times in ten, within four standard errors', () => {
    const often = { late: 0.1, replicates: 2000 };
    const tolerance = (p: number) => 4 * Math.sqrt((p * (1 - p)) / often.replicates);
    expect(Math.abs(arrivedBy(4, often) - 0.9)).toBeLessThan(tolerance(0.9));
    expect(Math.abs(arrivedBy(5, often) - 0.99)).toBeLessThan(tolerance(0.99));
  });

  it('never comes where every day it is late again', () => {
    expect(arrivedBy(20, { late: 1, replicates: 10 })).toBe(0);
  });
});

describe('danger', () => {
  it('outranks the rest: an animal hungry too long makes the room run short before a meal counts as missed', () => {
    const starved = animalWith({
      code: 'A1',
      kind: 'brachypelma-hamorii',
      gaugeMm: 50,
      lastTaken: TODAY - 60,
      lastMoult: { earliest: TODAY - 71, found: TODAY - 70 },
    });
    const snapshot = snapshotWith({ animals: [starved], facts: withPolicy(certainPolicy) });
    const answer = sundayCheck(snapshot, { days: 1, replicates: 40 });
    expect(answer).toMatchObject({ verdict: 'runs short', dangers: 1, missedMeals: 0 });
    expect(answer.nothingMissed.chance).toBe(1);
  });
});

describe('who is served first', () => {
  it('is the fragile: with prey for one, the spiderling eats and the grown dwarf waits', () => {
    const young = animalWith({ code: 'S1', kind: 'brachypelma-hamorii', gaugeMm: 20, lastTaken: TODAY - 8 });
    const grown = animalWith({ code: 'T1', kind: 'cyriocosmus-elegans', gaugeMm: 44, lastTaken: TODAY - 60 });
    const bins = [countedBin('B1', 'acheta-domesticus', { heads: 3, fromMm: 5, toMm: 6 })];
    const room = { animals: [young, grown], bins, facts: withPolicy(certainPolicy) };
    const { menu, tally } = judge(snapshotWith(room), { days: 1, replicates: 50 });
    const unmetOf = (code: string) => {
      const g = menu.groups.findIndex(({ animals }) => animals.includes(code));
      const windows = [...(menu.groups[g]?.windows.values() ?? [])];
      expect(windows.some(({ minMm, maxMm }) => minMm <= 5 && 6 <= maxMm)).toBe(true);
      return tally.unmet[g] as number;
    };
    expect(unmetOf('S1')).toBe(0);
    expect(unmetOf('T1')).toBeGreaterThan(0);
  });
});
