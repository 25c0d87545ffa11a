/** Tuning, frontier, foresight and comparison of the plan's benchmark. */
import { describe, expect, it } from 'vitest';
import { compare, type Paired } from './plan-rules/compare.ts';
import { foresee } from './plan-rules/foresight.ts';
import { costAt, hullOf } from './plan-rules/frontier.ts';
import { GRID } from './plan-rules/grid.ts';
import { packsOf } from './plan-rules/packs.ts';
import { play } from './plan-rules/play.ts';
import { pointOf } from './plan-rules/prices.ts';
import { buyerBy, type Rule } from './plan-rules/rules.ts';
import { roomNamed } from './plan-worlds/rooms.ts';

const ROOM = roomNamed('40');
const SEEDS = [1, 2];
const WEEKS = 16;

async function sumOf(rule: Rule): Promise<number> {
  let sum = 0;
  for (const seed of SEEDS) {
    const { cents, harm } = pointOf((await play(ROOM, { seed, weeks: WEEKS }, buyerBy(rule))).score);
    sum += cents + harm;
  }
  return sum / SEEDS.length;
}

describe('the rules', () => {
  it.each(['standing', 'reorder', 'base stock'] as const)(
    'by which a keeper buys are better tuned than not: %s',
    async (kind) => {
      const mine = GRID.filter(({ rule }) => rule === kind).filter((_, n) => n % 12 === 0);
      const sums: number[] = [];
      for (const rule of mine) sums.push(await sumOf(rule));
      const middle = sums.toSorted((a, b) => a - b)[Math.floor(sums.length / 2)] as number;
      expect(mine.length).toBeGreaterThan(10);
      expect(Math.min(...sums)).toBeLessThan(0.9 * middle);
    },
  );
});

describe('the frontier', () => {
  const points = [
    { cents: 10, harm: 0 },
    { cents: 4, harm: 2 },
    { cents: 9, harm: 1 },
    { cents: 4, harm: 5 },
    { cents: 2, harm: 6 },
  ];

  it('is the lower left hull, without what another beats', () => {
    expect(hullOf(points)).toEqual([0, 1, 4]);
  });

  it('is read between its points, and said to end where it ends', () => {
    expect(costAt(points, 1)).toEqual({ cents: 7, within: true });
    expect(costAt(points, 4)).toEqual({ cents: 3, within: true });
    expect(costAt(points, 6)).toEqual({ cents: 2, within: true });
    expect(costAt(points, 7)).toEqual({ cents: 2, within: false });
    expect(costAt(points.slice(1), 0.5)).toEqual({ cents: 9.5, within: false });
  });
});

describe('the comparison', () => {
  const worlds = (plan: number, foresight: number): Paired[] =>
    Array.from({ length: 12 }, (_, w) => ({
      plan: { cents: plan + w, harm: 1 },
      rules: [
        { cents: 120 + w, harm: 0 },
        { cents: 80 + w, harm: 2 },
      ],
      foresight: [{ cents: foresight + w, harm: 1 }],
    }));

  it('gives the share of what was avoidable at the same harm, with its interval', () => {
    const { removed, dearer, within } = compare(worlds(80, 60));
    expect(removed?.mean).toBeCloseTo(0.5, 12);
    expect(removed?.low).toBeCloseTo(0.5, 12);
    expect(dearer.mean).toBeCloseTo(85.5 / 105.5 - 1, 12);
    expect(within).toBe(true);
  });

  it('gives none where foresight saves nothing', () => {
    expect(compare(worlds(100, 100)).removed).toBeNull();
  });
});

describe('foresight', () => {
  it('is never worse than what it begins with, and better for searching longer', async () => {
    const year = { seed: 3, weeks: 12 };
    const rules = GRID.filter(({ rule }) => rule === 'reorder').filter((_, n) => n % 40 === 0);
    const played = [];
    for (const rule of rules) played.push(await play(ROOM, year, buyerBy(rule)));
    const sum = ({ cents, harm }: ReturnType<typeof pointOf>) => cents + harm;
    const starts = played.map(({ steps }) => packsOf(steps));
    const search = (budget: number) => sum(pointOf(foresee(ROOM, starts, { year, budget, weight: 1 }).score));
    const best = Math.min(...played.map(({ score }) => sum(pointOf(score))));
    expect(search(0)).toBeCloseTo(best, 9);
    expect(search(150)).toBeLessThan(0.95 * best);
  });
});
