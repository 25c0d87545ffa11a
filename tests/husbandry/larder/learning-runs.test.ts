/** What is learned of boxes from a generator that knows nothing of the program; the full runs are in tests/proof/learning.ts. */
import { describe, expect, it } from 'vitest';
import { bestHazard, bestSpeed } from '../../support/exact-belief.ts';
import { besideBest, coverageOf, hazardRuns, priorRuns } from '../../support/learning-runs.ts';

/** Four standard errors of a share of 0.9 over so many runs. */
const tolerance = (runs: number) => 4 * Math.sqrt((0.9 * 0.1) / runs);

describe('of boxes whose natures come from the prior', () => {
  it('nine in ten intervals of speed, hazard and count hold the truth, within four standard errors', () => {
    const runs = 120;
    const { speed, hazard, heads } = priorRuns(10_000, 10_000 + runs);
    for (const score of [speed, hazard, heads])
      expect(Math.abs(coverageOf(score) - 0.9)).toBeLessThan(tolerance(runs));
  });

  it('what is learned is hardly further from the truth than the best that can be known', () => {
    const { speed, hazard } = besideBest(20_000, 20_080, { speed: bestSpeed, hazard: bestHazard });
    expect(speed).toBeLessThan(1.1);
    expect(hazard).toBeLessThan(1.1);
  });
});

describe('of a hazard that is not the usual one', () => {
  it.each([0.5, 3])(
    'of %s times the default the interval narrows with the deaths and mostly holds it',
    (hazard) => {
      const few = hazardRuns(hazard, 15, { from: 30_000, to: 30_030 });
      const many = hazardRuns(hazard, 60, { from: 30_000, to: 30_030 });
      // A count of d deaths beside a gamma prior of shape 1/0.7^2 is known to 1/sqrt(d + shape).
      const shape = 1 / 0.7 ** 2;
      expect(many.width).toBeLessThan(few.width);
      expect(many.width).toBeLessThan((1.15 * (2 * 1.645)) / Math.sqrt(60 + shape));
      expect(coverageOf(many)).toBeGreaterThanOrEqual(0.8);
    },
  );
});
