/** Draws by key are even, and those of neighbours have nothing to do with each other. */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { dayKey, joinKeys, keyOfCode, mix32, uniform } from '../../src/maths/random.ts';

const DRAWS = 20_000;
const CELLS = 100;
/** A test that fails one time in a million when all is well. */
const ONE_IN_A_MILLION = 1e-6;

const replicate = (seed: number, r: number): number => joinKeys(mix32(seed), r);
const animal = (r: number, i: number): number => joinKeys(replicate(1, r), keyOfCode(`A${i}`));

/** The streams a run draws from: the i-th draw of each. */
const STREAMS: Readonly<Record<string, (i: number) => number>> = {
  'days of one animal': (i) => uniform(dayKey(animal(0, 1), i), 1),
  'animals of one replicate': (i) => uniform(animal(0, i), 1),
  'replicates of one animal': (i) => uniform(animal(i, 1), 1),
  'purposes under one key': (i) => uniform(animal(0, 1), i),
  'seeds of one purpose': (i) => uniform(replicate(i, 0), 1),
  'days of one replicate': (i) => uniform(dayKey(replicate(1, 0), i), 3),
};

const drawsOf = (draw: (i: number) => number): Float64Array =>
  Float64Array.from({ length: DRAWS }, (_, i) => draw(i));

function chiSquare(draws: Float64Array, cellOf: (x: number, i: number) => number, cells: number): number {
  const counts = new Float64Array(cells);
  draws.forEach((x, i) => {
    const cell = cellOf(x, i);
    counts[cell] = counts[cell]! + 1;
  });
  const expected = draws.length / cells;
  return counts.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
}

const expectEven = (statistic: number, cells: number): void => {
  const share = jStat.chisquare.cdf(statistic, cells - 1);
  expect(share).toBeGreaterThan(ONE_IN_A_MILLION);
  expect(share).toBeLessThan(1 - ONE_IN_A_MILLION);
};

function correlation(x: Float64Array, y: Float64Array): number {
  const mean = (v: Float64Array) => v.reduce((a, b) => a + b, 0) / v.length;
  const [mx, my] = [mean(x), mean(y)];
  const sum = (f: (i: number) => number) => x.reduce((total, _, i) => total + f(i), 0);
  const sxy = sum((i) => (x[i]! - mx) * (y[i]! - my));
  return sxy / Math.sqrt(sum((i) => (x[i]! - mx) ** 2) * sum((i) => (y[i]! - my) ** 2));
}

describe.each(Object.entries(STREAMS))('draws over %s', (_, draw) => {
  it('fall evenly over a hundred equal cells', () => {
    expectEven(
      chiSquare(drawsOf(draw), (x) => Math.floor(x * CELLS), CELLS),
      CELLS,
    );
  });

  it('fall evenly over a hundred cells as pairs of neighbours', () => {
    const draws = drawsOf(draw);
    const cellOf = (x: number, i: number) =>
      Math.floor(x * 10) * 10 + Math.floor(draws[(i + 1) % DRAWS]! * 10);
    expectEven(chiSquare(draws, cellOf, CELLS), CELLS);
  });

  it('are tied to none of the five draws that follow, within five standard errors', () => {
    const draws = drawsOf(draw);
    for (let lag = 1; lag <= 5; lag++)
      expect(Math.abs(correlation(draws.subarray(0, DRAWS - lag), draws.subarray(lag)))).toBeLessThan(
        5 / Math.sqrt(DRAWS),
      );
  });
});

describe('draws of two purposes', () => {
  it('are not tied to each other on the same days, nor on the days after', () => {
    for (const [one, other] of [
      [1, 2],
      [1, 3],
      [2, 7],
      [3, 8],
    ] as const) {
      const of = (purpose: number) => drawsOf((day) => uniform(dayKey(animal(0, 5), day), purpose));
      const [x, y] = [of(one), of(other)];
      const most = 5 / Math.sqrt(DRAWS);
      expect(Math.abs(correlation(x, y))).toBeLessThan(most);
      expect(Math.abs(correlation(x.subarray(1), y.subarray(0, DRAWS - 1)))).toBeLessThan(most);
    }
  });

  it('lie strictly between 0 and 1, the same for the same key', () => {
    const draws = drawsOf((i) => uniform(i, 1));
    expect(draws.every((u) => u > 0 && u < 1)).toBe(true);
    expect(drawsOf((i) => uniform(i, 1))).toEqual(draws);
  });
});

describe('keys', () => {
  it('differ for codes that differ in one letter or in the order of letters', () => {
    const codes = Array.from({ length: 20_000 }, (_, i) => `A${i}`);
    const keys = new Set([...codes, 'AB', 'BA'].map(keyOfCode));
    expect(codes.length + 2 - keys.size).toBeLessThanOrEqual(1);
  });

  it('depend on the order in which two are joined', () => {
    expect(joinKeys(1, 2)).not.toBe(joinKeys(2, 1));
  });
});
