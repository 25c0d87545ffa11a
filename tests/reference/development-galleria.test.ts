/**
 * Galleria mellonella: larva 29.1 d (Vikaash et al., our assumption of 30 C), survival through egg and early larva 0.52,
 * larva 0.90, pupa 0.73 (Mohamed and Coppel 1983): 0.342 in all, within 2 % (arithmetic).
 */
import { expect, it } from 'vitest';
import { galleriaMellonella } from '../../src/facts/prey/galleria-mellonella.ts';
import { constant, timeToAdult } from '../support/rearing.ts';

const reared = timeToAdult(galleriaMellonella, { temp: constant(30), from: 'hatch' });

it('brings 0.52 x 0.90 x 0.73 of the eggs to moths at 30 C', () => {
  expect(Math.abs(reared.survival / (0.52 * 0.9 * 0.73) - 1)).toBeLessThan(0.02);
});

it('takes the 29.1 days of the larva and the pupa at 30 C', () => {
  const pupa = 152 / (30 - 12);
  expect(Math.abs(reared.days - 29.1 - pupa)).toBeLessThan(0.6);
});
