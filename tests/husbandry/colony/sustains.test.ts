/** Sixty medium dubia a week in whole animals over three years: what is found sustains, and more breeders never less. */
import { expect, it } from 'vitest';
import { policy } from '../../../src/facts/policy.ts';
import { chancesOf, fewestSustaining } from '../../../src/husbandry/colony/sustains.ts';
import { dubia, dubiaStock, sixtyMedium } from '../../support/dubia-colony.ts';

const asked = { breeding: dubia, wanted: sixtyMedium, stock: dubiaStock, policy, seed: 1 };
/** Kept over the tests: each number of females is played through once. */
const chances = chancesOf(asked);
const LONG_MS = 240_000;

it(
  'meets the harvest in 95 % of weeks over 3 years with a chance of at least 0.9, and with one female fewer does not',
  () => {
    expect([policy.colonyWeeksMet.value, policy.colonyYears.value, policy.colonyChance.value]).toEqual([
      0.95, 3, 0.9,
    ]);
    const found = fewestSustaining(asked, chances.of)!;
    expect(found.chance).toBeGreaterThanOrEqual(0.9);
    expect(found.females).toBeGreaterThan(dubiaStock.females);
    expect(chances.of(found.females - 1).chance).toBeLessThan(0.9);
  },
  LONG_MS,
);

it(
  'has a chance that never falls as breeders are added, from nothing to certainty',
  () => {
    const fewest = Math.ceil(dubiaStock.females);
    const rising = [0, 1, 2, 3, 4, 6, 9, 14].map((more) => chances.of(fewest + more).chance);
    expect(rising).toEqual([...rising].sort((a, b) => a - b));
    expect(rising[0]).toBeLessThan(0.2);
    expect(rising.at(-1)).toBe(1);
  },
  LONG_MS,
);

it('gives up beyond the greatest colony allowed, and not before', () => {
  const never = { ...policy, colonyChance: { ...policy.colonyChance, value: 1.1 } };
  const tried: number[] = [];
  const of = (females: number) => {
    tried.push(females);
    return { females, males: 1, chance: 1 };
  };
  expect(fewestSustaining({ ...asked, policy: never }, of)).toBeNull();
  expect(Math.max(...tried)).toBeGreaterThan(4 * dubiaStock.females);
  expect(Math.max(...tried)).toBeLessThanOrEqual(8 * Math.ceil(dubiaStock.females));
});
