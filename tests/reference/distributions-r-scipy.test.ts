/** Values on which R 4.2 and scipy 1.17 agree to ten places, of the distributions that are used here. */
import { expect, it } from 'vitest';
import { gammaQuantile, lowerGammaShare } from '../../src/maths/gamma.ts';
import { normalCdf, normalQuantile } from '../../src/maths/normal.ts';

it('has the 97.5 % quantile of a gamma variable of shape 6 and rate 7', () => {
  expect(gammaQuantile(0.975, 6) / 7).toBeCloseTo(1.66690458276, 10);
});

it('has the share of an Erlang time of four parts at rate 0.4 that is over by day 10', () => {
  expect(lowerGammaShare(4, 0.4 * 10)).toBeCloseTo(0.566529879633, 10);
});

it('has the share of a normal variable below 1.96 and its 97.5 % quantile', () => {
  expect(normalCdf(1.96)).toBeCloseTo(0.9750021048517795, 14);
  expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 14);
});
