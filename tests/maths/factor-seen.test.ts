/** A factor seen with an error. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factorSeen } from '../../src/maths/factor-seen.ts';

const MOST = 3;
const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a factor that was seen', () => {
  it('is what was read where it was read without error, and as before where nothing could be read', () => {
    const exact = factorSeen({ variance: 0.25, times: 0.4, error: 0, most: MOST });
    expect(exact.log).toBeCloseTo(Math.log(0.4), 9);
    expect(exact.variance).toBeCloseTo(0, 9);
    const blind = factorSeen({ variance: 0.25, times: 0.4, error: 1e6, most: MOST });
    expect(blind.log).toBeCloseTo(0, 9);
    expect(blind.variance).toBeCloseTo(0.25, 9);
  });

  it('near 1 follows the conjugate normal: the mean of both by their precisions (Gelman et al., BDA 3, eq. 2.10)', () => {
    const [variance, error, off] = [1e-4, 0.02, 0.005];
    const { log, variance: left } = factorSeen({ variance, error, times: 1 + off, most: MOST });
    const weight = variance / (variance + error ** 2);
    expect(log / (weight * off)).toBeCloseTo(1, 2);
    expect(left / (variance * (1 - weight))).toBeCloseTo(1, 2);
  });

  it('goes as far as it may where less than nothing was left for it', () => {
    expect(factorSeen({ variance: 0.25, times: -5, error: 0.01, most: 1 }).log).toBeCloseTo(-1, 9);
  });

  it('lies where no other log within the bounds is likelier', () => {
    fc.assert(
      fc.property(share(0.01, 1), share(-2, 4), share(0.1, 2), (variance, times, error) => {
        const cost = (x: number) => x ** 2 / (2 * variance) + (Math.exp(x) - times) ** 2 / (2 * error ** 2);
        const { log } = factorSeen({ variance, times, error, most: MOST });
        const logs = Array.from({ length: 1201 }, (_, k) => -MOST + k / 200);
        expect(cost(log)).toBeLessThanOrEqual(Math.min(...logs.map(cost)) * (1 + 1e-9) + 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('read as more is never taken for less', () => {
    fc.assert(
      fc.property(
        share(0.01, 1),
        share(-2, 4),
        share(0, 2),
        share(0.01, 2),
        (variance, times, more, error) => {
          const [less, after] = [times, times + more].map(
            (each) => factorSeen({ variance, times: each, error, most: MOST }).log,
          );
          expect(after! - less!).toBeGreaterThanOrEqual(-1e-9);
        },
      ),
    );
  });
});
