/**
 * One evening's allocation against the greatest number of meals possible (max-flow), on random windows and single heads
 * of prey along one axis of length. The policy serves the fragile first, then the narrowest window, then the smallest
 * prey, each from what is nearest to outgrowing it. It is no optimum of one evening, and its regret is kept here.
 *
 * Serving the window that opens latest first, from the longest that fits, loses no meal of one evening. It was tried:
 * over twelve mixed rooms of two weeks it missed 80.7 meals where this order missed 80.4, and two spiderlings on five
 * growing crickets missed a third more, because prey outgrows the smaller window first. So it was not taken.
 */
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { mix32, uniform } from '../../../src/maths/random.ts';
import { maxFlow, mostServed } from '../../support/max-flow.ts';
import { pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { animalWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const CASES = 200;

interface Served {
  readonly served: number;
  readonly most: number;
  /** The same of the fragile, as if nobody else were there. */
  readonly fragile: number;
  readonly mostFragile: number;
}

/** Six animals, each its own window, and five heads of prey of 4 to 40 mm; every window `widthOf` times as long as it begins. */
function evening(seed: number, widthOf: (u: number) => number, isFragile: (n: number) => boolean): Served {
  const draw = (n: number) => uniform(mix32(seed), n);
  const kinds = [1, 2, 3, 4, 5, 6].map((n) => {
    const min = 4 * 8 ** draw(n);
    const prey = [min, min * widthOf(draw(10 + n))] as const;
    const meal = { intervalDays: [5, 5], graceDays: 2, safeGapDays: 9 } as const;
    const urgency = isFragile(n) ? 'fragile' : 'ordinary';
    return pencilKind({ code: `K${n}`, words: `w${n}`, prey, urgency, ...meal });
  });
  const species = [1, 2, 3, 4, 5].map((n) => {
    const from = 4 * 10 ** draw(20 + n);
    return pencilPrey(`P${n}`, [from, from * 1.01]);
  });
  const snapshot = snapshotWith({
    animals: kinds.map(({ code }) => animalWith({ code, kind: code, gaugeMm: 10, lastTaken: TODAY - 5 })),
    bins: species.map(({ code, adultLengthMm: { value } }) =>
      countedBin(code, code, { heads: 1, fromMm: value / 1.01, toMm: value }),
    ),
    rooms: [{ code: 'room', name: 'Room', dayTempC: 15, nightTempC: 15 }],
    facts: pencilFacts(kinds, species),
  });
  const { tally, stock, menu } = judge(snapshot, { days: 1, replicates: 1 });
  const lengths = stock.cohorts.map((cohort) => cohort.nodes[0]!.lengthMm[0]!);
  const of = (wanted: (urgency: string) => boolean) => {
    const groups = [...menu.groups.keys()].filter((g) => wanted(menu.groups[g]!.rule.urgency));
    const windows = groups.map((g) => [...menu.groups[g]!.windows.values()][0]!);
    const served = groups.reduce((sum, g) => sum + tally.due[g]! - tally.unmet[g]!, 0);
    return { served, most: mostServed(windows, lengths) };
  };
  const fragile = of((urgency) => urgency === 'fragile');
  return { ...of(() => true), fragile: fragile.served, mostFragile: fragile.most };
}

const evenings = (widthOf: (u: number) => number, isFragile = (_: number) => false): Served[] =>
  Array.from({ length: CASES }, (_, seed) => evening(seed + 1, widthOf, isFragile));
const total = (all: readonly Served[], of: keyof Served): number =>
  all.reduce((sum, one) => sum + one[of], 0);

describe('the yardstick', () => {
  it('finds the greatest flow of a network worked by hand', () => {
    const net = [
      [0, 3, 2, 0],
      [0, 0, 1, 2],
      [0, 0, 0, 3],
      [0, 0, 0, 0],
    ];
    expect(maxFlow(net)).toBe(5);
    const windows = [
      { minMm: 1, maxMm: 3 },
      { minMm: 2, maxMm: 3 },
    ];
    expect(mostServed(windows, [1, 2, 9])).toBe(2);
    expect(mostServed(windows, [1])).toBe(1);
  });
});

describe('the policy', () => {
  it('serves 92 of 100 possible meals where all windows are equally wide', () => {
    const all = evenings(() => 2);
    expect(all.every(({ served, most }) => served <= most)).toBe(true);
    expect(total(all, 'served') / total(all, 'most')).toBeCloseTo(0.92, 2);
  });

  it('serves 96 of 100 possible meals where widths differ from narrow to wide', () => {
    const all = evenings((u) => 1.2 + 3 * u);
    expect(all.every(({ served, most }) => served <= most)).toBe(true);
    expect(total(all, 'served') / total(all, 'most')).toBeCloseTo(0.96, 2);
  });

  it('serves the fragile as if they were alone, and of all meals no fewer than nine in ten', () => {
    const mixed = (u: number) => 1.2 + 3 * u;
    const all = evenings(mixed, (n) => n % 2 === 0);
    const alone = evenings(mixed, () => true);
    expect(total(all, 'fragile') / total(all, 'mostFragile')).toBeGreaterThan(0.95);
    expect(total(all, 'served') / total(all, 'most')).toBeGreaterThan(0.9);
    expect(total(alone, 'fragile')).toBe(total(alone, 'served'));
  });
});
