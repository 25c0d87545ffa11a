/** The weeks ahead on the ruler: stock grows to the right, windows move, and the weeks add up to the run. */
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { weeksAhead } from '../../../src/husbandry/supply/weeks-ahead.ts';
import {
  animalWith,
  countedBin,
  facts,
  mixedAnimals,
  mixedBins,
  policyWith,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const policy = policyWith({ weeksAhead: 3, aheadReplicates: 20 });
const crickets = countedBin('B1', 'acheta-domesticus', { heads: 400, fromMm: 3, toMm: 4 });
const growing = snapshotWith({
  animals: [animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 40, lastTaken: TODAY - 3 })],
  bins: [crickets],
  facts: { ...facts, policy },
});
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** Mean length of what is alive, weighed by heads. */
const meanLength = (edgesMm: readonly number[], heads: readonly number[]) =>
  sum(heads.map((n, i) => n * Math.sqrt(edgesMm[i]! * edgesMm[i + 1]!))) / sum(heads);

describe('the weeks ahead', () => {
  it('begin today and follow one another', () => {
    const weeks = weeksAhead(growing).weeks;
    expect(weeks.map(({ week, from }) => [week, from])).toEqual([
      [0, TODAY],
      [1, TODAY + 7],
      [2, TODAY + 14],
      [3, TODAY + 21],
    ]);
  });

  it('move growing crickets to the right, fewer from week to week', () => {
    const alive = weeksAhead(growing).weeks.map(({ spectrum }) => ({
      heads: sum(spectrum.alive[0]!.heads),
      lengthMm: meanLength(spectrum.edgesMm, spectrum.alive[0]!.heads),
    }));
    for (const [week, now] of alive.entries()) {
      const before = alive[week - 1];
      if (before === undefined) continue;
      expect(now.lengthMm).toBeGreaterThan(before.lengthMm * 1.2);
      expect(now.heads).toBeLessThan(before.heads);
    }
    expect(alive[0]!.lengthMm).toBeCloseTo(3.5, 0);
  });

  it('add up to what the whole run eats, wants and lacks', () => {
    const room = snapshotWith({
      animals: mixedAnimals(60),
      bins: mixedBins(10),
      facts: { ...facts, policy },
    });
    const weeks = weeksAhead(room).weeks;
    const { tally } = judge(room, { days: 28, replicates: 20 });
    const mean = (sums: Float64Array) => sum([...sums]) / tally.replicates;
    const over = (of: (week: (typeof weeks)[number]) => number) => sum(weeks.map(of));
    expect(over(({ spectrum }) => sum(spectrum.eaten))).toBeCloseTo(mean(tally.eatenByBand), 6);
    expect(over(({ groups }) => sum(groups.map(({ wanted }) => wanted)))).toBeCloseTo(mean(tally.wanted), 6);
    expect(over(({ groups }) => sum(groups.map(({ unmet }) => unmet)))).toBeCloseTo(mean(tally.unmet), 6);
    expect(over(({ spectrum }) => sum(spectrum.missing))).toBeCloseTo(mean(tally.unmet), 6);
    expect(mean(tally.unmet)).toBeGreaterThan(0);
  });

  it('let the window of an animal about to moult move to longer prey', () => {
    const moulting = animalWith({
      code: 'A1',
      kind: 'brachypelma-hamorii',
      gaugeMm: 30,
      lastTaken: TODAY - 20,
      lastMoult: { earliest: TODAY - 150, found: TODAY - 150 },
    });
    const weeks = weeksAhead({ ...growing, animals: [moulting] }).weeks;
    const longest = weeks.map(({ groups }) => Math.max(...groups.map(({ window }) => window.maxMm)));
    expect(Math.max(...longest)).toBeGreaterThan(longest[0]! * 1.1);
  });

  it('bring in a delivery in its week and nothing that is not ordered', () => {
    const delivery = {
      code: 'D1',
      species: 'gryllodes-sigillatus',
      bin: 'B2',
      lot: { heads: 100, fromMm: 10, toMm: 12 },
      day: TODAY + 9,
    };
    const bins = [crickets, countedBin('B2', 'gryllodes-sigillatus', { heads: 0, fromMm: 10, toMm: 12 })];
    const banded = weeksAhead({ ...growing, bins, deliveries: [delivery] }).weeks.map(({ spectrum }) =>
      sum(spectrum.alive.find(({ species }) => species === 'gryllodes-sigillatus')?.heads ?? []),
    );
    expect(banded[0]).toBe(0);
    expect(banded[1]).toBe(0);
    expect(banded[2]).toBeGreaterThan(60);
  });
});
