/**
 * Days from egg to adult of Tenebrio molitor: Heidari-Parsa 2023 (as cited with the table): 203.7, 170.7, 143.1 and
 * 111.3 d at 20, 23, 25 and 27 C, within 8 %.
 */
import { expect, it } from 'vitest';
import { tenebrioMolitor } from '../../src/facts/prey/tenebrio-molitor.ts';
import { constant, timeToAdult } from '../support/rearing.ts';

it.each([
  [20, 203.7],
  [23, 170.7],
  [25, 143.1],
  [27, 111.3],
])('takes from egg to adult at %d C the %f days measured', (tempC, days) => {
  const reared = timeToAdult(tenebrioMolitor, { temp: constant(tempC), from: 'egg' });
  expect(Math.abs(reared.days / days - 1)).toBeLessThan(0.08);
});
