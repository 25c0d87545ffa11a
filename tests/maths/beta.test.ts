/** The beta distribution against jStat and its closed forms. */
import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { betaQuantile, lowerBetaShare } from '../../src/maths/beta.ts';

const SHAPES = [
  [0.5, 0.5],
  [1, 9],
  [2.5, 40],
  [30, 4],
] as const;

test.each(SHAPES)('the share below a value of beta(%f, %f) is that of jStat', (a, b) => {
  for (const x of [0.01, 0.1, 0.35, 0.8, 0.99])
    expect(lowerBetaShare(x, a, b)).toBeCloseTo(jStat.beta.cdf(x, a, b), 7);
});

test.each(SHAPES)('a quantile of beta(%f, %f) has its share below it', (a, b) => {
  for (const p of [0.05, 0.5, 0.95]) expect(lowerBetaShare(betaQuantile(p, a, b), a, b)).toBeCloseTo(p, 12);
});

test('beta(1, n) is known in closed form: 1 - (1 - x)^n', () => {
  expect(lowerBetaShare(0.2, 1, 7)).toBeCloseTo(1 - 0.8 ** 7, 14);
  expect(betaQuantile(0.95, 1, 7)).toBeCloseTo(1 - 0.05 ** (1 / 7), 14);
});

test('beta(1/2, 1/2) is the arcsine law: 2/pi asin(sqrt x)', () => {
  for (const x of [0.01, 0.35, 0.9])
    expect(lowerBetaShare(x, 0.5, 0.5)).toBeCloseTo((2 / Math.PI) * Math.asin(Math.sqrt(x)), 13);
});

test('nothing lies below 0 and all below 1', () => {
  expect([lowerBetaShare(-1, 2, 3), lowerBetaShare(0, 2, 3), lowerBetaShare(1, 2, 3)]).toEqual([0, 0, 1]);
});
