/** Parts brought to a sum by as much as each is doubted. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stretchedTo } from '../../src/maths/stretched.ts';

const sum = (values: Iterable<number>): number => [...values].reduce((a, b) => a + b, 0);

describe('parts stretched to a sum', () => {
  it('of one doubt are scaled alike', () => {
    const found = stretchedTo(Float64Array.of(10, 30), Float64Array.of(1, 1), 20);
    expect([...found!.parts]).toEqual([expect.closeTo(5, 9), expect.closeTo(15, 9)]);
    expect(found!.logTimes).toBeCloseTo(Math.log(0.5), 9);
    expect(found!.slope).toBeCloseTo(20, 6);
  });

  it('of which one is doubted twice as much: 4 of the sure and 2 x 2 of the other by hand', () => {
    // x + y with x = 2 e^z, y = 1 e^2z: e^z = 2 gives 4 + 4.
    const found = stretchedTo(Float64Array.of(2, 1), Float64Array.of(1, 2), 8);
    expect([...found!.parts]).toEqual([expect.closeTo(4, 7), expect.closeTo(4, 7)]);
  });

  it('leaves what is not doubted out of the sum and as it is; nothing cannot be stretched', () => {
    const found = stretchedTo(Float64Array.of(7, 10), Float64Array.of(0, 1), 30);
    expect([...found!.parts]).toEqual([7, expect.closeTo(30, 7)]);
    expect(stretchedTo(Float64Array.of(7, 0), Float64Array.of(0, 1), 30)).toBeNull();
  });

  it('whatever they are, come to the sum, all in one direction, the more doubted further', () => {
    const part = fc.tuple(
      fc.double({ min: 0.1, max: 1e4, noNaN: true }),
      fc.double({ min: 0.05, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 1, maxLength: 30 }),
        fc.double({ min: 0.01, max: 50, noNaN: true }),
        (all, times) => {
          const parts = Float64Array.from(all, ([x]) => x);
          const weights = Float64Array.from(all, ([, w]) => w);
          const total = times * sum(parts);
          const found = stretchedTo(parts, weights, total)!;
          expect(Math.abs(sum(found.parts) / total - 1)).toBeLessThan(1e-8);
          found.parts.forEach((x, j) => {
            expect(Math.log(x / parts[j]!)).toBeCloseTo(weights[j]! * found.logTimes, 7);
          });
        },
      ),
    );
  });
});
