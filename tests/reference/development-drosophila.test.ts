/**
 * Days from egg to adult of Drosophila melanogaster over 41 strain records (the pratique collection of degree-days):
 * 17.4-22.3 d at 18 C, 8.5-10.6 d at 25 C, 7.0-8.7 d at 28 C; classic values 19, 8.5 and 7 d (Ashburner and Thompson
 * 1978).
 */
import { expect, it } from 'vitest';
import { drosophilaMelanogaster } from '../../src/facts/prey/drosophila-melanogaster.ts';
import { constant, timeToAdult } from '../support/rearing.ts';

it.each([
  [18, 17.4, 22.3],
  [25, 8.5, 10.6],
  [28, 7, 8.7],
])('takes from egg to adult at %d C between %f and %f days', (tempC, least, most) => {
  const { days } = timeToAdult(drosophilaMelanogaster, { temp: constant(tempC), from: 'egg' });
  expect(days).toBeGreaterThan(least);
  expect(days).toBeLessThan(most);
});
