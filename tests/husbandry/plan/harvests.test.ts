/** Harvests are what the animals eat out of a colony in the fates their plan was found in. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { type Fates, fatesOf } from '../../../src/husbandry/plan/fates.ts';
import { harvestLines, takenInFates, takenOf } from '../../../src/husbandry/plan/harvests.ts';
import type { LaidOut } from '../../../src/husbandry/plan/lay-out.ts';
import { type LivedInFates, livedInFates, overPeriods } from '../../../src/husbandry/plan/lived-in-fates.ts';
import { finely } from '../../../src/husbandry/plan/with-ready.ts';
import { laidOut } from '../../support/plan/planned.ts';
import { animalWith, binWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const LEVEL = 0.85;
const COLONIES = [1, 2];

const colony = (code: string, species: string, heads: number) =>
  binWith({
    ...{ code, species, role: 'colony', capacity: 3000, keepAdults: true },
    events: [{ kind: 'counted', day: TODAY - 1, heads, fromMm: null, toMm: null }],
  });

/** Thirty tarantulas, few crickets, two colonies and what else stands there; lived through for six weeks with nothing bought. */
function room(others: readonly Bin[] = []): { laid: LaidOut; fates: Fates; lived: LivedInFates } {
  const { laid, problem } = laidOut(
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
        countedBin('B1', 'acheta-domesticus', { heads: 60, fromMm: 6, toMm: 12 }),
        colony('B2', 'blaptica-dubia', 400),
        colony('B3', 'zophobas-morio', 300),
        ...others,
      ],
    }),
    6,
  );
  const fates = fatesOf(laid, problem);
  const lived = livedInFates({ fates }, finely(laid, problem, LEVEL), {
    packs: [],
    cups: [],
    rests: problem.rests.map(() => 0),
  });
  return { laid, fates, lived };
}

let laid: LaidOut;
let lived: LivedInFates;
let wanted: number[];

beforeAll(() => {
  const made = room();
  laid = made.laid;
  lived = made.lived;
  const { fates } = made;
  wanted = laid.fine.eaters.map((_, e) => {
    const all = fates.wanted.filter((__, at) => at % fates.eaters === e);
    return all.reduce((sum, items) => sum + items, 0) / fates.count;
  });
});

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const takenIn = (t: number, p: number) => takenOf(laid, lived, { p, t, size: null });

describe('what is taken', () => {
  it('is all that is wanted, but what is missed and what waits at the end', () => {
    const groups = laid.fine.eaters.length;
    laid.fine.eaters.forEach((_, e) => {
      const items = sum(
        laid.periods.flatMap((__, t) => laid.places.map((___, p) => takenIn(t, p)[e]!.items)),
      );
      const missed = overPeriods(lived.missed, { e, groups });
      const late = lived.late[(laid.periods.length - 1) * groups + e]!;
      expect(items).toBeCloseTo(wanted[e]! - missed - late, 6);
    });
    expect(sum(wanted)).toBeGreaterThan(50);
  });

  it('out of a colony is told by trade size, every head once, as much as is enough with the chance asked for', () => {
    const lines = harvestLines(laid, { lived, level: LEVEL, rests: [] });
    for (const p of COLONIES) {
      const { bins, chain } = laid.places[p]!;
      const sizes = chain.species.sizeClasses.value;
      laid.periods.forEach(({ from, days }, t) => {
        const all = [...takenInFates(laid, lived, { p, t, size: null })];
        const bySize = sizes.map((size) => [...takenInFates(laid, lived, { p, t, size })]);
        expect(sum(all) / all.length).toBeCloseTo(sum(takenIn(t, p).map(({ heads }) => heads)), 6);
        all.forEach((heads, fate) => {
          expect(sum(bySize.map((taken) => taken[fate]!))).toBeCloseTo(heads, 6);
        });
        const sorted = all.toSorted((a, b) => a - b);
        const enough = sorted.find((heads) => all.filter((n) => n <= heads).length >= LEVEL * all.length)!;
        const told = lines.filter(
          (line) => line.key.startsWith(`harvest:${bins[0]!.bin.code}:`) && line.key.endsWith(dateOf(from)),
        );
        expect(Math.abs(sum(told.map(({ heads }) => heads)) - enough)).toBeLessThanOrEqual(sizes.length / 2);
        sizes.forEach((size, s) => {
          const line = told.find(
            ({ key }) => key === `harvest:${bins[0]!.bin.code}:${size.name}@${dateOf(from)}`,
          );
          const share = sum(all) > 0 ? sum(bySize[s]!) / sum(all) : 0;
          expect(Math.abs((line?.heads ?? 0) - enough * share)).toBeLessThanOrEqual(0.5 + 1e-9);
          if (line) expect(line.actBy).toBe(from + days - 1);
        });
      });
    }
    expect(lines.length).toBeGreaterThan(10);
  });

  it('is never a breeder where the grown are kept and look like their young: a grown roach of this kind is 42 mm', () => {
    const ofEverySize = { ...lived, taken: lived.taken.map(() => 1) };
    const lines = harvestLines(laid, { lived: ofEverySize, level: LEVEL, rests: [] });
    const longest = lines.map((line) =>
      line.species === 'blaptica-dubia' && line.what === 'harvest' ? line.toMm : 0,
    );
    expect(Math.max(...longest)).toBe(41);
  });

  it('is hardly out of a colony where as large prey of its kind is out already', () => {
    const taken = (made: Pick<ReturnType<typeof room>, 'laid' | 'lived'>) =>
      sum(
        harvestLines(made.laid, { lived: made.lived, level: LEVEL, rests: [] }).map((line) =>
          line.species === 'blaptica-dubia' && line.what === 'harvest' && line.fromMm < 34 ? line.heads : 0,
        ),
      );
    const out = room([countedBin('B4', 'blaptica-dubia', { heads: 6000, fromMm: 5, toMm: 34 })]);
    expect(taken(out)).toBeLessThan(0.4 * taken({ laid, lived }));
  });
});

const dateOf = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10);
