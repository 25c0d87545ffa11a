/** Harvests are what the animals eat out of a colony in the fates their plan was found in. */
import { beforeAll, describe, expect, it } from 'vitest';
import { fatesOf } from '../../../src/husbandry/plan/fates.ts';
import { harvestLines, takenOf } from '../../../src/husbandry/plan/harvests.ts';
import type { LaidOut } from '../../../src/husbandry/plan/lay-out.ts';
import { type LivedInFates, livedInFates, overPeriods } from '../../../src/husbandry/plan/lived-in-fates.ts';
import { finely } from '../../../src/husbandry/plan/with-ready.ts';
import { laidOut } from '../../support/plan/planned.ts';
import { animalWith, binWith, snapshotWith, TODAY } from '../../support/room.ts';

const LEVEL = 0.85;
const EVERYTHING = { fromMm: 0, toMm: Number.POSITIVE_INFINITY };

let laid: LaidOut;
let lived: LivedInFates;
let wanted: number[];

beforeAll(() => {
  const made = laidOut(
    snapshotWith({
      animals: Array.from({ length: 30 }, (_, i) =>
        animalWith({
          code: `A${i}`,
          kind: i % 2 ? 'brachypelma-hamorii' : 'acanthoscurria-geniculata',
          gaugeMm: 40 + 3 * i,
          lastTaken: TODAY - 1 - (i % 9),
        }),
      ),
      bins: [
        binWith({
          ...{ code: 'B1', species: 'blaptica-dubia', role: 'colony', capacity: 3000, keepAdults: true },
          events: [{ kind: 'counted', day: TODAY - 1, heads: 400, fromMm: null, toMm: null }],
        }),
      ],
    }),
    6,
  );
  laid = made.laid;
  const fates = fatesOf(laid, made.problem);
  lived = livedInFates({ fates }, finely(laid, made.problem, LEVEL), { packs: [], cups: [] });
  wanted = laid.fine.eaters.map((_, e) => {
    const all = fates.wanted.filter((__, at) => at % fates.eaters === e);
    return all.reduce((sum, items) => sum + items, 0) / fates.count;
  });
});

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const takenIn = (t: number, size = EVERYTHING) => takenOf(laid, lived, { p: 0, t, size });

describe('what is taken out of a colony', () => {
  it('is what its eaters want, less what they miss and what may still wait', () => {
    laid.fine.eaters.forEach(({ lateMost }, e) => {
      const items = sum(laid.periods.map((_, t) => takenIn(t)[e]!.items));
      const fed = wanted[e]! - overPeriods(lived.missed, { e, groups: laid.fine.eaters.length });
      expect(items).toBeLessThanOrEqual(fed + 1e-6);
      expect(items).toBeGreaterThanOrEqual(fed - 2 * Math.max(...lateMost) - 1e-6);
    });
    expect(sum(wanted)).toBeGreaterThan(50);
  });

  it('is told by trade size, in whole heads', () => {
    const lines = harvestLines(laid, lived);
    expect(lines.length).toBeGreaterThan(5);
    laid.periods.forEach(({ from, days }, t) => {
      const told = lines.filter(({ key }) => key.endsWith(lineDay(from)));
      const sizes = laid.places[0]!.chain.species.sizeClasses.value;
      const inSizes = sum(sizes.map((size) => sum(takenIn(t, size).map(({ heads }) => heads))));
      expect(Math.abs(sum(told.map(({ heads }) => heads)) - inSizes)).toBeLessThanOrEqual(sizes.length / 2);
      for (const line of told) expect(line.actBy).toBe(from + days - 1);
    });
  });
});

const lineDay = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10);
