/** Worked examples of learning from counts, checked with the functions bins are learned with. */
import { describe, expect, it } from 'vitest';
import { gridQuantiles, normalised } from '../../src/maths/belief-grid.ts';
import { lnCountOdds } from '../../src/maths/count-odds.ts';
import { totalByRatio } from '../../src/maths/ratio-estimate.ts';

const grid = (from: number, to: number, points: number): Float64Array =>
  Float64Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));

const bandOf = (x: Float64Array, ln: (at: number) => number, shares: readonly number[]) =>
  Array.from(gridQuantiles(x, normalised(x.map(ln)), shares));

describe('a rate learned from a count of Poisson events', () => {
  // Hoff (2009) A First Course in Bayesian Statistical Methods, section 3.2: prior gamma(2, 1), births of two groups.
  it.each([
    [111, 217, 1.704943, 2.222679],
    [44, 66, 1.173437, 1.890836],
  ])('of %s women with %s children has the published interval', (women, children, low, high) => {
    const x = grid(0.5, 4, 20_001);
    const band = bandOf(
      x,
      (rate) => Math.log(rate) - rate + lnCountOdds(children, women * rate, women * rate),
      [0.025, 0.975],
    );
    expect(band[0]).toBeCloseTo(low, 5);
    expect(band[1]).toBeCloseTo(high, 5);
  });

  // J. Albert, Bayesian Thinking, 10 Sep 2007: gamma(58, 581); exact quantiles beside his 0.079 and 0.122 by simulation.
  it('of 58 events in 581 has the exact interval, and the next 550 its negative binomial', () => {
    const x = grid(0.02, 0.3, 20_001);
    const band = bandOf(x, (rate) => lnCountOdds(58, 581 * rate, 581 * rate) - Math.log(rate), [0.05, 0.95]);
    expect(band[0]).toBeCloseTo(0.0792889526085, 6);
    expect(band[1]).toBeCloseTo(0.122321996591, 6);
    const mean = (550 * 58) / 581;
    const odds = Float64Array.from({ length: 200 }, (_, k) => lnCountOdds(k, mean, mean + mean ** 2 / 58));
    const chance = odds.map(Math.exp);
    const upTo = (k: number) => chance.slice(0, k + 1).reduce((a, b) => a + b, 0);
    expect([39, 73].map((k) => [upTo(k - 1), upTo(k)])).toEqual(
      [0.05, 0.95].map((share) => [expect.toSatisfy((p) => p < share), expect.toSatisfy((p) => p >= share)]),
    );
  });
});

describe('a share learned from so many out of so many', () => {
  const shares = grid(1e-9, 1 - 1e-9, 20_001);
  const learned = (k: number, n: number, at: readonly number[]) =>
    bandOf(shares, (p) => lnCountOdds(k, n * p, n * p * (1 - p)), at);

  // Hoff (2009), section 3.1, uniform prior; Gelman et al., Bayesian Data Analysis, placenta previa; Geyer, Stat 5102 notes.
  it.each([
    [2, 10, [0.0602177341729, 0.51775585236]],
    [437, 980, [0.415065492455, 0.477199770629]],
  ])('of %s out of %s has the published interval', (k, n, [low, high]) => {
    const band = learned(k, n, [0.025, 0.975]);
    expect(band[0]).toBeCloseTo(low!, 6);
    expect(band[1]).toBeCloseTo(high!, 6);
  });

  it('of none out of ten is not none: its median is 1 - 2^(-1/11)', () => {
    // The grid's steps are 0.00005 wide, and the likeliest point is its first.
    expect(learned(0, 10, [0.5])[0]).toBeCloseTo(1 - 2 ** (-1 / 11), 4);
  });
});

describe('a total by ratio', () => {
  // Scheaffer, Mendenhall & Ott, Elementary Survey Sampling, exercise 6.1: 12 plots, 75 units of area in all.
  it('is that of the trees', () => {
    const x = [0.3, 0.5, 0.4, 0.9, 0.7, 0.2, 0.6, 0.5, 0.8, 0.4, 0.8, 0.6].reduce((a, b) => a + b, 0);
    const y = [6, 9, 7, 19, 15, 5, 12, 9, 20, 9, 18, 13].reduce((a, b) => a + b, 0);
    expect(totalByRatio(75, { heads: y, mass: x, cv: 0.1 }).total).toBeCloseTo(1589.55223881, 6);
  });
});
