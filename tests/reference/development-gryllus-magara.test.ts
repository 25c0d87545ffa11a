/**
 * Gryllus bimaculatus by the lines of Magara et al. 2024, PLoS ONE, 10.1371/journal.pone.0300438: egg 108.7 degree-days
 * above 15.9 C, nymph 555.6 above 16.2 C; at 30 C 7.71 and 40.3 d, within 2 % (arithmetic).
 */
import { expect, it } from 'vitest';
import { gryllusBimaculatus } from '../../src/facts/prey/gryllus-bimaculatus.ts';
import { constant, timeToAdult } from '../support/rearing.ts';

const temp = constant(30);
const nymph = timeToAdult(gryllusBimaculatus, { temp, from: 'hatch' }).days;

it('takes 40.3 days as a nymph at 30 C', () => {
  expect(Math.abs(nymph / 40.3 - 1)).toBeLessThan(0.02);
});

it('takes 7.71 days as an egg at 30 C', () => {
  const egg = timeToAdult(gryllusBimaculatus, { temp, from: 'egg' }).days - nymph;
  expect(Math.abs(egg / 7.71 - 1)).toBeLessThan(0.02);
});
