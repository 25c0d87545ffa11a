/** Prey that is not to be fed, because it is too young or kept to breed, does not hide the prey beside it. */
import { describe, expect, it } from 'vitest';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { binAnswers } from '../../../src/husbandry/supply/summary.ts';
import {
  animalWith,
  binWith,
  certainPolicy,
  countedBin,
  facts,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const spider = animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 30, lastTaken: TODAY - 9 });

describe('a colony whose breeders are kept', () => {
  const colony = (keepAdults: boolean) =>
    snapshotWith({
      animals: [spider],
      bins: [
        binWith({
          code: 'B1',
          species: 'blaptica-dubia',
          role: 'colony',
          keepAdults,
          events: [{ kind: 'counted', day: TODAY, heads: 400, fromMm: 5, toMm: 45 }],
        }),
      ],
      facts: { ...facts, policy: certainPolicy },
    });

  it('feeds its young', () => {
    const judged = judge(colony(true), { days: 7, replicates: 5 });
    expect(judged.tally.due.some((meals) => meals > 0)).toBe(true);
    expect(judged.tally.missedOf.every((missed) => missed === 0)).toBe(true);
    expect(judged.larder.totals.eaten[0]).toBeGreaterThan(0);
  });

  it('does not call its breeders outgrown', () => {
    const [kept, open] = [true, false].map((keepAdults) => {
      const snapshot = colony(keepAdults);
      return binAnswers(judge(snapshot, { days: 2, replicates: 5 }), snapshot)[0]!;
    });
    expect(kept!.outgrown).toBeGreaterThan(0);
    expect(kept!.outgrown).toBeLessThan(open!.outgrown);
    expect(kept!.lengthsNow.high).toBeLessThan(45);
  });
});

describe('a bin that is left alone', () => {
  const crickets = countedBin('B1', 'acheta-domesticus', { heads: 100, fromMm: 5, toMm: 8 });
  const others = countedBin('B2', 'acheta-domesticus', { heads: 100, fromMm: 5, toMm: 8 });
  const room = (restsUntil: number | null, beside: Bin[] = []) =>
    snapshotWith({
      animals: [spider],
      bins: [{ ...crickets, restsUntil }, ...beside],
      facts: { ...facts, policy: certainPolicy },
    });
  const run = { days: 7, replicates: 5 };

  it('feeds nobody before its day while anything else fits, and whoever finds nothing else', () => {
    const eaten = (snapshot: Snapshot, days = run.days) => [
      ...judge(snapshot, { ...run, days }).larder.totals.eaten,
    ];
    const [resting, instead] = eaten(room(TODAY + 7, [others]));
    expect(resting).toBe(0);
    expect(instead).toBeGreaterThan(1);
    expect(eaten(room(TODAY + 7))).toEqual(eaten(room(null)));
    const [after] = eaten(room(TODAY + 7, [{ ...others, restsUntil: Number.POSITIVE_INFINITY }]), 14);
    expect(after).toBeGreaterThan(1);
  });

  it('left alone for ever stands as if nobody ate', () => {
    const { totals } = judge(room(Number.POSITIVE_INFINITY), run).larder;
    expect(totals.eaten[0]).toBe(0);
    expect(totals.died[0]! + totals.left[0]!).toBeCloseTo(totals.start[0]! + totals.hatched[0]!, 6);
  });
});

describe('prey that nobody here eats', () => {
  it('is not outgrowing anybody', () => {
    const snapshot = snapshotWith({
      animals: [],
      bins: [countedBin('B1', 'galleria-mellonella', { heads: 60, fromMm: 15, toMm: 25 })],
      facts: { ...facts, policy: certainPolicy },
    });
    const [box] = binAnswers(judge(snapshot, { days: 2, replicates: 5 }), snapshot);
    expect(box!.left).toBeGreaterThan(50);
    expect(box!.outgrown).toBe(0);
  });
});

describe('a box of waxworms with hatchlings among them', () => {
  it('feeds its grown larvae', () => {
    const snapshot = snapshotWith({
      animals: [{ ...spider, gaugeMm: 150 }],
      bins: [countedBin('B1', 'galleria-mellonella', { heads: 60, fromMm: 1, toMm: 25 })],
      facts: { ...facts, policy: certainPolicy },
    });
    const judged = judge(snapshot, { days: 14, replicates: 5 });
    expect(judged.larder.totals.eaten[0]).toBeGreaterThan(0);
  });
});
