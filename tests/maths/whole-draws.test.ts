/** Draws of whole things agree with the distributions they are drawn from. */
import { describe, expect, it } from 'vitest';
import { midShares } from '../../src/maths/points.ts';
import { moved, movesOf, poissonQuantile, roundedNormal } from '../../src/maths/whole-draws.ts';

describe('moves', () => {
  const moves = movesOf([Float64Array.of(0.2, 0.5, 0), Float64Array.of(0, 0, 1)]);

  it('go to each place with its share, and to death with the rest', () => {
    const places = [...midShares(1000)].map((u) => moved(moves, 0, u));
    const share = (place: number) => places.filter((at) => at === place).length / 1000;
    expect([share(0), share(1), share(2), share(-1)]).toEqual([0.2, 0.5, 0, 0.3]);
    expect(moved(moves, 1, 0.999)).toBe(2);
  });
});

describe('a Poisson quantile', () => {
  it('is the smallest count with so much below it: P(X <= 2) is 0.6767 at mean 2', () => {
    expect(poissonQuantile(0.676, 2)).toBe(2);
    expect(poissonQuantile(0.677, 2)).toBe(3);
    expect(poissonQuantile(0.9, 0)).toBe(0);
  });

  it.each([0.3, 7, 120, 499, 501, 3000])('keeps mean and variance %d', (mean) => {
    const draws = [...midShares(20_000)].map((u) => poissonQuantile(u, mean));
    const average = draws.reduce((a, b) => a + b, 0) / draws.length;
    const variance = draws.reduce((sum, k) => sum + (k - average) ** 2, 0) / draws.length;
    expect(average / mean).toBeCloseTo(1, 3);
    expect(variance / mean).toBeCloseTo(1, 1);
  });
});

it('rounds a normal draw, and never below nothing', () => {
  expect(roundedNormal(0.5, 25, 0.3)).toBe(25);
  expect(roundedNormal(1e-9, 5, 0.5)).toBe(0);
});
