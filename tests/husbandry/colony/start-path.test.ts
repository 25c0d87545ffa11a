/** The way of a colony from its starters. */
import { describe, expect, it } from 'vitest';
import { breedingOf } from '../../../src/husbandry/colony/breeding.ts';
import { startPath } from '../../../src/husbandry/colony/start-path.ts';
import { totalHeads } from '../../../src/husbandry/larder/index.ts';
import { barren } from '../../../src/maths/chain-step.ts';
import { dayOfChain } from '../../../src/maths/uniformise.ts';
import { facts } from '../../support/room.ts';

const bred = [...facts.species.values()].filter(({ laying, cup }) => laying !== null && cup === null);
const temp = { minC: 27, maxC: 27 };

describe('a colony begun with adults of every age', () => {
  it.each(bred)('has of its $commonName females whom a week of adult life leaves', (species) => {
    const breeding = breedingOf(species, temp)!;
    const { chain, firstAdult, rates } = breeding;
    const [first] = startPath({
      breeding,
      temp,
      starters: { kind: 'adults', females: 20, males: 10 },
      binSize: null,
      breeders: { females: 20, males: 10 },
      sizes: [],
      weeks: 1,
    });
    let heads: Float64Array = new Float64Array(chain.size).fill(20 / (chain.size - firstAdult), firstAdult);
    for (let day = 0; day < 7; day++) heads = dayOfChain(heads, barren(rates)).heads;
    expect(first!.females).toBeCloseTo(totalHeads(heads), 6);
  });
});
