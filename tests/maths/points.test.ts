/** Distributions told by equally likely points. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { everyPair, midShares, thinned } from '../../src/maths/points.ts';

it('takes the middles of equal shares', () => {
  expect([...midShares(4)]).toEqual([0.125, 0.375, 0.625, 0.875]);
});

it('joins each with each', () => {
  const pairs = everyPair(Float64Array.of(1, 2), Float64Array.of(10, 20), (a, b) => a + b);
  expect([...pairs]).toEqual([11, 21, 12, 22]);
});

it('tells eight values by four: every second of them in order', () => {
  expect([...thinned(Float64Array.of(8, 1, 7, 2, 6, 3, 5, 4), 4)]).toEqual([1, 3, 5, 7]);
});

it('keeps as many points as there are, whatever their order, and never leaves their range', () => {
  const list = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(list, fc.integer({ min: 1, max: 80 }), (values, n) => {
      const points = [...thinned(Float64Array.from(values), n)];
      expect(points).toHaveLength(n);
      expect(points).toEqual(points.toSorted((a, b) => a - b));
      expect(points.every((point) => values.includes(point))).toBe(true);
      expect([...thinned(Float64Array.from(values), values.length)]).toEqual(
        values.toSorted((a, b) => a - b),
      );
    }),
  );
});
