/**
 * The 90th percentile of twelve measurements of NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2. The handbook
 * itself takes definition 6 of Hyndman and Fan (95.1981); ours is definition 1, the smallest value with nine tenths of
 * the list at or below it, which is 95.1959 for these numbers.
 */
import { expect, it } from 'vitest';
import { sortedQuantile } from '../../src/maths/quantile.ts';

const MEASURED = [
  95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199, 95.1682,
];

it('is the eleventh of twelve values by definition 1', () => {
  expect(sortedQuantile(Float64Array.from(MEASURED).sort(), 0.9)).toBe(95.1959);
});
