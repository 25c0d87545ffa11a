/** The gamma distribution against identities and a second library. */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { gammaQuantile, lnGamma, lowerGammaShare } from '../../src/maths/gamma.ts';

const SHAPES = [0.5, 1, 2.04, 4, 6, 20, 49.6, 200];

describe('the gamma distribution', () => {
  it('has the logarithms of factorials', () => {
    let ln = 0;
    for (let n = 1; n < 60; n++) {
      expect(Math.abs(lnGamma(n) - ln)).toBeLessThan(1e-13 * (1 + ln));
      ln += Math.log(n);
    }
  });

  it('is the exponential distribution for shape 1', () => {
    for (const x of [0.01, 0.5, 1, 2, 5, 30]) expect(lowerGammaShare(1, x)).toBeCloseTo(-Math.expm1(-x), 14);
  });

  it('agrees with a second library on either side of the mean', () => {
    for (const shape of SHAPES)
      for (const times of [0.2, 0.8, 1, 1.3, 2.5])
        expect(lowerGammaShare(shape, shape * times)).toBeCloseTo(jStat.lowRegGamma(shape, shape * times), 9);
  });

  it('agrees with a second library on quantiles, and comes back to the share', () => {
    for (const shape of SHAPES)
      for (const p of [0.001, 0.05, 0.5, 0.95, 0.999]) {
        const x = gammaQuantile(p, shape);
        expect(Math.abs(lowerGammaShare(shape, x) - p)).toBeLessThan(1e-12);
        expect(Math.abs(x / jStat.gamma.inv(p, shape, 1) - 1)).toBeLessThan(1e-6);
      }
  });
});
