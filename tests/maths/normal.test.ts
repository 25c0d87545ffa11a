/** The normal distribution against published values and a second library. */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../src/maths/normal.ts';

/** Wichura 1988 (AS 241), its own check values; and the two-sided 5 % point. */
const QUANTILES = [
  [0.25, -0.6744897501960817],
  [0.001, -3.090232306167814],
  [1e-20, -9.262340089798409],
  [0.975, 1.959963984540054],
] as const;

/** Abramowitz and Stegun 1964, table 26.1. */
const SHARES = [
  [0, 0.5],
  [0.5, 0.691462461274013],
  [1, 0.841344746068543],
  [2, 0.977249868051821],
  [3, 0.99865010196837],
] as const;

describe('the normal distribution', () => {
  it.each(QUANTILES)('has the published quantile of %f', (p, z) => {
    expect(Math.abs(normalQuantile(p) / z - 1)).toBeLessThan(1e-14);
  });

  it.each(SHARES)('has the published share below %f, and its mirror', (z, share) => {
    expect(normalCdf(z)).toBeCloseTo(share, 14);
    expect(normalCdf(-z)).toBeCloseTo(1 - share, 14);
  });

  it('agrees with a second library to nine decimals over six deviations either side', () => {
    for (let z = -6; z <= 6; z += 0.25) expect(normalCdf(z)).toBeCloseTo(jStat.normal.cdf(z, 0, 1), 9);
  });

  it('goes from share to quantile and back', () => {
    for (let p = 0.0005; p < 1; p += 0.0005) expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 14);
  });

  it('rises with the share, without a step where one formula takes over from the next', () => {
    for (const p of [0.075, 0.925, Math.exp(-25)]) {
      const [below, at, above] = [p * (1 - 1e-12), p, p * (1 + 1e-12)].map(normalQuantile) as [
        number,
        number,
        number,
      ];
      expect(below).toBeLessThanOrEqual(at);
      expect(at).toBeLessThanOrEqual(above);
      expect(above - below).toBeLessThan(1e-10);
    }
  });
});
