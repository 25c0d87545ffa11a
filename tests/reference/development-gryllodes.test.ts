/**
 * Days from hatch to adult of Gryllodes sigillatus: Kong, Vadboncoeur, Bertram and MacMillan 2025,
 * doi:10.5281/zenodo.14681072, CC-BY 4.0. At 30 C 43.7 d (19 crickets, 95 % interval of the mean 3.2 d either side);
 * at 26 and 36 C 67.0 and 30.9 d, within 8 %; survival to adult at 26 to 36 C pooled 0.809, within 0.05 (136 crickets).
 */
import { expect, it } from 'vitest';
import { gryllodesSigillatus } from '../../src/facts/prey/gryllodes-sigillatus.ts';
import { constant, timeToAdult } from '../support/rearing.ts';

it.each([
  [30, 43.7, 3.2],
  [26, 67, 0.08 * 67],
  [36, 30.9, 0.08 * 30.9],
])('takes from hatch to adult at %d C the %f days measured', (tempC, days, tolerance) => {
  const reared = timeToAdult(gryllodesSigillatus, { temp: constant(tempC), from: 'hatch' });
  expect(Math.abs(reared.days - days)).toBeLessThan(tolerance);
});

it('brings to adult the share measured at 26 to 36 C', () => {
  const shares = [26, 30, 32, 36].map(
    (tempC) => timeToAdult(gryllodesSigillatus, { temp: constant(tempC), from: 'hatch' }).survival,
  );
  expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) / shares.length - 0.809)).toBeLessThan(0.05);
});
