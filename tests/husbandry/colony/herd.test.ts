/** Whole animals: on the mean of many herds they are the engine, and more breeders keep the draws of fewer. */
import { describe, expect, it } from 'vitest';
import { speciesByCode } from '../../../src/facts/prey/index.ts';
import { type Breeding, breedingOf } from '../../../src/husbandry/colony/breeding.ts';
import { type Herd, herdLaws, VACANT, weekOfHerd } from '../../../src/husbandry/colony/herd.ts';
import { totalHeads } from '../../../src/husbandry/larder/index.ts';
import { joinKeys, uniform } from '../../../src/maths/random.ts';
import { dayOfChain } from '../../../src/maths/uniformise.ts';
import { dubia } from '../../support/dubia-colony.ts';
import { constant } from '../../support/rearing.ts';

/** Ten females and three males in the middle of adult life, and thirty young of each sex half grown. */
function herdOf({ chain, firstAdult }: Breeding, key: number): Herd {
  const heads = new Int32Array(2 * chain.size);
  heads[firstAdult - 10] = 30;
  heads[chain.size + firstAdult - 10] = 30;
  return {
    heads,
    breeders: new Int32Array(13).fill(firstAdult + 4),
    females: 10,
    ageWeeks: new Float64Array(13),
    brooding: Float64Array.from({ length: 10 }, (_, slot) => uniform(key, slot)),
  };
}

const countOf = (herd: Herd): number =>
  herd.heads.reduce((sum, n) => sum + n, 0) + herd.breeders.filter((at) => at !== VACANT).length;

/** The engine with the females laying for themselves: births by female, males beside them. */
function expected({ chain, rates, firstAdult, femaleShare }: Breeding, weeks: number): number {
  const perFemale = { ...rates, birth: rates.birth.map((rate) => rate / femaleShare) };
  const barren = { ...rates, birth: new Float64Array(chain.size) };
  const of = (entries: readonly (readonly [number, number])[]): Float64Array => {
    const heads = new Float64Array(chain.size);
    for (const [at, n] of entries) heads[at] = n;
    return heads;
  };
  let females = of([[firstAdult + 4, 10]]);
  let others = of([
    [firstAdult + 4, 3],
    [firstAdult - 10, 60],
  ]);
  for (let day = 0; day < 7 * weeks; day++) {
    females = new Float64Array(dayOfChain(females, perFemale).heads);
    others = new Float64Array(dayOfChain(others, barren).heads);
  }
  return totalHeads(females) + totalHeads(others);
}

const withoutBroods = (): Breeding => {
  const species = speciesByCode.get('blaptica-dubia')!;
  const { brood: _, ...laying } = species.laying!;
  return breedingOf({ ...species, laying }, constant(28))!;
};

describe.each([
  ['in broods', dubia],
  ['singly', withoutBroods()],
])('a herd whose young come %s', (_, breeding) => {
  it('grows on the mean as the engine does, to within four standard errors', () => {
    const laws = herdLaws(breeding);
    const [herds, weeks] = [600, 10];
    const counts = Array.from({ length: herds }, (_, replicate) => {
      const key = joinKeys(7, replicate);
      const herd = herdOf(breeding, key);
      for (let week = 1; week <= weeks; week++) weekOfHerd(laws, herd, joinKeys(key, week));
      return countOf(herd);
    });
    const mean = counts.reduce((a, b) => a + b, 0) / herds;
    const variance = counts.reduce((sum, n) => sum + (n - mean) ** 2, 0) / (herds - 1);
    expect(Math.abs(mean - expected(breeding, weeks))).toBeLessThan(4 * Math.sqrt(variance / herds));
  });
});

describe('a herd', () => {
  const laws = herdLaws(dubia);

  it('has no young without a male', () => {
    const herd = herdOf(dubia, 1);
    herd.breeders.fill(VACANT, 10);
    herd.heads.fill(0);
    for (let week = 1; week <= 20; week++) weekOfHerd(laws, herd, joinKeys(1, week));
    expect(herd.heads.every((n) => n === 0)).toBe(true);
  });

  it('keeps the fates of those there when there are more', () => {
    const few = herdOf(dubia, 3);
    const many = herdOf(dubia, 3);
    many.heads.forEach((n, at) => {
      if (n > 0) many.heads[at] = n + 5;
    });
    for (let week = 1; week <= 4; week++) {
      weekOfHerd(laws, few, joinKeys(3, week));
      weekOfHerd(laws, many, joinKeys(3, week));
      expect(many.heads.every((n, at) => n >= few.heads[at]!)).toBe(true);
    }
  });

  it('fills a vacant place with the youngest adult of that sex', () => {
    const herd = herdOf(dubia, 5);
    herd.heads.fill(0);
    herd.breeders[0] = VACANT;
    herd.heads[dubia.firstAdult - 1] = 200;
    weekOfHerd(laws, herd, joinKeys(5, 1));
    expect(herd.breeders[0]).toBeGreaterThanOrEqual(dubia.firstAdult);
    expect(herd.breeders[0]).toBeLessThan(dubia.firstAdult + 2);
  });
});
