/**
 * Days from egg to adult of Acheta domesticus: Odhiambo, Ochia and Okuto, East African Journal of Agriculture and
 * Biotechnology, article 834: 200.5 d at 18 C and 66.3 d at 30 C, within 10 %. Eggs take 13 d at 30.5 C in a separate
 * rearing (care pages; within 20 %).
 */
import { expect, it } from 'vitest';
import { achetaDomesticus } from '../../src/facts/prey/acheta-domesticus.ts';
import { constant, timeToAdult } from '../support/rearing.ts';

it.each([
  [18, 200.5],
  [30, 66.3],
])('takes from egg to adult at %d C the %f days measured', (tempC, days) => {
  const reared = timeToAdult(achetaDomesticus, { temp: constant(tempC), from: 'egg' });
  expect(Math.abs(reared.days / days - 1)).toBeLessThan(0.1);
});

it('leaves the egg at 30.5 C after about 13 days', () => {
  const temp = constant(30.5);
  const [whole, young] = (['egg', 'hatch'] as const).map(
    (from) => timeToAdult(achetaDomesticus, { temp, from }).days,
  );
  expect(Math.abs((whole! - young!) / 13 - 1)).toBeLessThan(0.2);
});
