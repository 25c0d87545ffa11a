/** Beliefs on grids: priors laid out, drawn finer, and their quantiles read off. */
import { describe, expect, it } from 'vitest';
import {
  coarsened,
  gammaGrid,
  gridQuantiles,
  momentsOn,
  normalGrids,
  normalised,
  refined,
  refinedShares,
  weightedQuantiles,
} from '../../src/maths/belief-grid.ts';
import { gammaQuantile } from '../../src/maths/gamma.ts';
import { logMoments, measured, mixtureQuantiles } from '../../src/maths/log-normal.ts';
import { normalCdf, normalQuantile } from '../../src/maths/normal.ts';

describe('a prior on a grid', () => {
  it('has the mean, spread and quantiles of the normal it stands for, cut at three deviations', () => {
    const { coarse, fine } = normalGrids(0.25);
    const { mean, sd } = momentsOn(fine.x, normalised(fine.lnWeight));
    expect(mean).toBeCloseTo(0, 12);
    expect(Math.abs(sd / 0.25 - 1)).toBeLessThan(0.02);
    const [low] = gridQuantiles(fine.x, normalised(fine.lnWeight), [0.05]);
    expect(low).toBeCloseTo(0.25 * normalQuantile(0.05), 2);
    expect(coarsened(fine.x)).toEqual(coarse.x);
    expect(normalGrids(0).fine.x).toEqual(new Float64Array(1));
  });

  it('has those of the gamma it stands for', () => {
    const { x, lnWeight } = gammaGrid(0.7);
    const shape = 1 / 0.49;
    const weights = normalised(lnWeight);
    expect(momentsOn(x, weights).mean).toBeCloseTo(1, 2);
    expect(momentsOn(x, weights).sd).toBeCloseTo(0.7, 2);
    for (const share of [0.05, 0.5, 0.95]) {
      const [quantile] = gridQuantiles(x, weights, [share]);
      expect(Math.abs(quantile! / (gammaQuantile(share, shape) / shape) - 1)).toBeLessThan(0.02);
    }
  });
});

describe('values at few points', () => {
  it('are drawn to many without loss where they bend as a parabola does', () => {
    const { coarse, fine } = normalGrids(1);
    const drawn = refined(coarse.x.map((x) => x * x));
    fine.x.forEach((x, k) => {
      if (Math.abs(x) < 2.25) expect(drawn[k]).toBeCloseTo(x * x, 10);
    });
    expect(refined(Float64Array.of(7))).toEqual(Float64Array.of(7));
  });

  it('that are shares are drawn without loss where they rise as a normal distribution does', () => {
    const { coarse, fine } = normalGrids(1);
    const drawn = refinedShares(coarse.x.map((x) => normalCdf(2 * x - 1)));
    fine.x.forEach((x, k) => {
      expect(drawn[k]).toBeCloseTo(normalCdf(2 * x - 1), 6);
    });
  });
});

describe('quantiles', () => {
  it('of weighted values are drawn between the middles of their weights, in whatever order they come', () => {
    const [low, mid, high] = weightedQuantiles(
      Float64Array.of(3, 1, 2),
      Float64Array.of(0.2, 0.4, 0.4),
      [0.1, 0.4, 1],
    );
    expect(low).toBe(1);
    expect(mid).toBeCloseTo(1.5, 12);
    expect(high).toBe(3);
  });

  it('of one log-normal part are its own, within a hundredth; a part of none is none', () => {
    const [low, mid, high] = mixtureQuantiles([{ mean: 100, variance: 400, weight: 1 }], [0.05, 0.5, 0.95]);
    const { mean, variance } = logMoments({ mean: 100, variance: 400 });
    const exact = (share: number) => Math.exp(mean + Math.sqrt(variance) * normalQuantile(share));
    expect(Math.abs(low! / exact(0.05) - 1)).toBeLessThan(0.01);
    expect(Math.abs(mid! / exact(0.5) - 1)).toBeLessThan(0.001);
    expect(Math.abs(high! / exact(0.95) - 1)).toBeLessThan(0.01);
    expect(mixtureQuantiles([{ mean: 0, variance: 0, weight: 1 }], [0.5])).toEqual([0]);
  });
});

describe('a quantity that was read', () => {
  it('comes to lie between what was thought and what was read, by their precision', () => {
    const { now } = measured({ mean: 100, variance: 100 }, 120, Math.sqrt(Math.log1p(0.01)));
    expect(now.mean).toBeGreaterThan(109);
    expect(now.mean).toBeLessThan(111);
    expect(Math.sqrt(now.variance) / now.mean).toBeCloseTo(0.1 / Math.SQRT2, 2);
  });
});
