/** Quantiles of lists and of counts: the inverse of the empirical distribution. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countQuantile, sortedQuantile } from '../../src/maths/quantile.ts';

const shares = fc.double({ min: 0.001, max: 1, noNaN: true });

describe('the quantile of a list', () => {
  it('is the smallest value with that share of the list at or below it', () => {
    const lists = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(lists, shares, (list, p) => {
        const sorted = [...list].sort((a, b) => a - b);
        const enough = sorted.find((x) => sorted.filter((y) => y <= x).length >= p * sorted.length - 1e-9);
        expect(sortedQuantile(sorted, p)).toBe(enough);
      }),
      { seed: 1 },
    );
  });

  it('does not slip by one where the share times the length is whole but for rounding', () => {
    const list = Array.from({ length: 100 }, (_, i) => i + 1);
    for (let n = 1; n <= 100; n++) expect(sortedQuantile(list, n / 100)).toBe(n);
  });

  it('is not a number for an empty list, and the ends for shares beyond them', () => {
    expect(sortedQuantile([], 0.5)).toBeNaN();
    expect([sortedQuantile([3, 7], 0), sortedQuantile([3, 7], 1)]).toEqual([3, 7]);
  });
});

describe('the quantile of a count', () => {
  it('is the same as that of a list with these shares', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 20 }),
        shares,
        (weights, p) => {
          const total = weights.reduce((a, b) => a + b, 0);
          fc.pre(total > 0);
          const list = weights.flatMap((n, k) => new Array<number>(n).fill(k));
          expect(
            countQuantile(
              weights.map((n) => n / total),
              p,
            ),
          ).toBe(sortedQuantile(list, p));
        },
      ),
      { seed: 1 },
    );
  });
});
