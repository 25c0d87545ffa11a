/** A colony counted without sizes is taken for one that has bred for long. */

import { describe, expect, it } from 'vitest';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/index.ts';
import { totalHeads } from '../../../src/husbandry/larder/lot.ts';
import { binOn } from '../../../src/husbandry/larder/replay.ts';
import { nextDay } from '../../../src/husbandry/larder/state.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { binWith, facts, TODAY } from '../../support/room.ts';

const climate = steadyClimate({ minC: 28, maxC: 30 });
const species = facts.species.get('blaptica-dubia') as PreySpecies;
const chain = chainOf(species);
const colony = binWith({
  code: 'C1',
  species: species.code,
  role: 'colony',
  keepAdults: true,
  events: [{ kind: 'counted', day: TODAY, heads: 500, fromMm: null, toMm: null }],
});

describe('a colony counted without sizes', () => {
  const state = binOn(colony, TODAY, { chain, policy: facts.policy, climate });

  it('holds as many heads as were counted', () => {
    expect(totalHeads(state.heads, chain.firstHead)).toBeCloseTo(500, 9);
  });

  it('keeps its mix of sizes while it grows', () => {
    const life = { chain, bin: colony, climate, speed: 1 };
    let later = state;
    for (let day = 0; day < 30; day++) later = nextDay(life, later, TODAY + day).state;
    const factor = totalHeads(later.heads) / totalHeads(state.heads);
    expect(factor).toBeGreaterThan(1);
    later.heads.forEach((n, j) => {
      expect(n / factor).toBeCloseTo(state.heads[j] as number, 2);
    });
  });
});
