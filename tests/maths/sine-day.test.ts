/** Means over a sine day against plain summing over the hours. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanOverSineDay, type PiecewiseLinear, valueAt } from '../../src/maths/sine-day.ts';

const STEPS = 20_000;

/** Middle-point sum over one whole turn of the sine. */
function summed(curve: PiecewiseLinear, min: number, max: number): number {
  let sum = 0;
  for (let i = 0; i < STEPS; i++) {
    const turn = Math.sin((2 * Math.PI * (i + 0.5)) / STEPS);
    sum += valueAt(curve, (min + max) / 2 + ((max - min) / 2) * turn);
  }
  return sum / STEPS;
}

const curves = fc
  .array(fc.tuple(fc.double({ min: 0.5, max: 8, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
    minLength: 2,
    maxLength: 7,
  })
  .map((steps) => {
    let x = 5;
    return {
      x: steps.map(([width]) => {
        x += width;
        return x;
      }),
      y: steps.map(([, y]) => y),
    };
  });

describe('the mean over a sine day', () => {
  it('is what summing over the day gives, for any curve of straight pieces', () => {
    const temps = fc.tuple(
      fc.double({ min: 0, max: 40, noNaN: true }),
      fc.double({ min: 0, max: 20, noNaN: true }),
    );
    fc.assert(
      fc.property(curves, temps, (curve, [min, swing]) => {
        expect(meanOverSineDay(curve, min, min + swing)).toBeCloseTo(summed(curve, min, min + swing), 5);
      }),
      { numRuns: 150, seed: 1 },
    );
  });

  it('is the curve itself on a day without a swing', () => {
    const curve = { x: [10, 20, 30], y: [0, 1, 0.5] };
    for (const temp of [5, 10, 13, 20, 25, 30, 35])
      expect(meanOverSineDay(curve, temp, temp)).toBe(valueAt(curve, temp));
  });

  it('is the value at the middle wherever the curve is straight over the whole day', () => {
    const curve = { x: [0, 40], y: [0, 4] };
    expect(meanOverSineDay(curve, 18, 30)).toBeCloseTo(2.4, 12);
  });
});
