/**
 * Tribolium castaneum: 31.7 and 25.0 d from egg to adult at 30 and 35 C (laboratory life table), within 12 %, in which
 * the line of White 1987 lies too (32.1 and 22.9 d); eggs per female and day 0, 2, 3 and 11 at 20, 22.5, 25 and 32.5 C
 * (Howe 1962), within 15 %; no normal adults at 20 C (Howe 1956).
 */
import { describe, expect, it } from 'vitest';
import { triboliumCastaneum } from '../../src/facts/prey/tribolium-castaneum.ts';
import { chainOf } from '../../src/husbandry/larder/chain.ts';
import { ratesOfDay } from '../../src/husbandry/larder/rates.ts';
import { constant, rear, timeToAdult } from '../support/rearing.ts';

const chain = chainOf(triboliumCastaneum);

/** Hatchlings of a grown beetle by the day, turned back to eggs of a female. */
function eggsPerFemale(tempC: number): number {
  const rates = ratesOfDay(chain, {
    temp: constant(tempC),
    weekMeanC: tempC,
    speed: 1,
    holdingLossPerDay: 0,
    laying: 1,
  });
  const { femaleShare, hatchShare } = triboliumCastaneum.laying!;
  return rates.birth.at(-1)! / femaleShare.value / hatchShare.value;
}

describe('from egg to adult', () => {
  it.each([
    [30, 31.7, 32.1],
    [35, 25, 22.9],
  ])('at %d C it takes the %f days measured, and those of another line', (tempC, measured, line) => {
    const { days } = timeToAdult(triboliumCastaneum, { temp: constant(tempC), from: 'egg' });
    expect(Math.abs(days / measured - 1)).toBeLessThan(0.12);
    expect(Math.abs(days / line - 1)).toBeLessThan(0.12);
  });

  it('nobody gets there at a constant 20 C', () => {
    expect(rear(triboliumCastaneum, { temp: constant(20), from: 'egg', days: 400 }).adult.at(-1)).toBe(0);
  });
});

it.each([
  [22.5, 2],
  [25, 3],
  [32.5, 11],
])('lays at %f C the %d eggs measured', (tempC, eggs) => {
  expect(Math.abs(eggsPerFemale(tempC) / eggs - 1)).toBeLessThan(0.15);
});

it('lays nothing at 20 C', () => {
  expect(eggsPerFemale(20)).toBe(0);
});
