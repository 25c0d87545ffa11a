/**
 * One evening's allocation against the greatest number of meals possible (max-flow), on random windows and prey along
 * one axis of length. Among groups of one urgency the window that opens latest is served first, from the longest prey
 * that fits it: that loses no meal. Urgency comes before number: a fragile group may take what two others needed.
 */
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { mix32, uniform } from '../../../src/maths/random.ts';
import { maxFlow, mostServed } from '../../support/max-flow.ts';
import { pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { animalWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const CASES = 60;

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
  it('serves as many as can be where all windows are equally wide', () => {
    const all = evenings(() => 2);
    expect(total(all, 'most')).toBeGreaterThan(CASES * 3);
    expect(all.filter(({ served, most }) => served !== most)).toEqual([]);
  });

  it('serves as many as can be where widths differ from narrow to wide', () => {
    const all = evenings((u) => 1.2 + 3 * u);
    expect(all.filter(({ served, most }) => served !== most)).toEqual([]);
  });

  it('loses at most a meal in eight to serving the fragile first, and none of the fragile for it', () => {
    const all = evenings(
      (u) => 1.2 + 3 * u,
      (n) => n % 2 === 0,
    );
    expect(all.every(({ served, most }) => served <= most)).toBe(true);
    expect(1 - total(all, 'served') / total(all, 'most')).toBeLessThan(0.125);
    expect(total(all, 'fragile')).toBe(total(all, 'mostFragile'));
  });
});
