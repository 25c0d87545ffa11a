/** Whole numbers all as likely. */
import { expect, it } from 'vitest';
import { evenVariance } from '../../src/maths/even.ts';

it('gives a die the variance 35/12 and a certain number none', () => {
  expect(evenVariance(6)).toBeCloseTo(35 / 12, 15);
  expect(evenVariance(1)).toBe(0);
});
