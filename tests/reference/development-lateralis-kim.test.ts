/**
 * Periplaneta lateralis: Kim and Rust 2013: nymphs take 223 d at 26.7 C (within 5 %), 13.9 of 16.8 eggs of a case hatch;
 * a handbook of urban insects says 118-137 d at 30-35 C.
 */
import { expect, it } from 'vitest';
import { periplanetaLateralis } from '../../src/facts/prey/periplaneta-lateralis.ts';
import { constant, timeToAdult } from '../support/rearing.ts';

const nymphDays = (tempC: number): number =>
  timeToAdult(periplanetaLateralis, { temp: constant(tempC), from: 'hatch' }).days;

it('takes 223 days as a nymph at 26.7 C', () => {
  expect(Math.abs(nymphDays(26.7) / 223 - 1)).toBeLessThan(0.05);
});

it('takes 118 to 137 days as a nymph in the middle of 30 to 35 C', () => {
  expect(nymphDays(32.5)).toBeGreaterThan(118);
  expect(nymphDays(32.5)).toBeLessThan(137);
});

it('hatches 13.9 nymphs from the 16.8 eggs of a case', () => {
  const { brood, hatchShare } = periplanetaLateralis.laying!;
  expect(hatchShare.value).toBeCloseTo(13.9 / 16.8, 3);
  expect(Math.abs(brood!.young.value * hatchShare.value - 13.9)).toBeLessThan(0.01);
});
