/** What is in a bin: a replay of what was seen and done, with the engine between. */

import { describe, expect, it } from 'vitest';
import type { BinEvent } from '../../../src/husbandry/larder/bin.ts';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/index.ts';
import { totalHeads } from '../../../src/husbandry/larder/lot.ts';
import { ratesOfDay } from '../../../src/husbandry/larder/rates.ts';
import { binOn } from '../../../src/husbandry/larder/replay.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { binWith, facts, TODAY } from '../../support/room.ts';

const speciesOf = (code: string) => facts.species.get(code) as PreySpecies;
const temp = { minC: 25, maxC: 25 };
const counted = (heads: number, fromMm: number, toMm: number): BinEvent => ({
  day: TODAY - 7,
  kind: 'counted',
  heads,
  fromMm,
  toMm,
});
const headsAfter = (code: string, ...events: BinEvent[]) => {
  const chain = chainOf(speciesOf(code));
  const { heads } = binOn(binWith({ code: 'B1', species: code, events }), TODAY, {
    chain,
    policy: facts.policy,
    climate: steadyClimate(temp),
  });
  return { chain, heads, total: totalHeads(heads, chain.firstHead) };
};

describe('a holding bin', () => {
  it('loses its daily share: after a week exp(-7 x loss) of what was counted is alive', () => {
    const loss = speciesOf('blaptica-dubia').holdingLossPerDay.value;
    expect(headsAfter('blaptica-dubia', counted(200, 12, 15)).total).toBeCloseTo(
      200 * Math.exp(-7 * loss),
      6,
    );
  });

  it('holds less by what was offered out of it, of the lengths offered', () => {
    const offered: BinEvent = { day: TODAY, kind: 'offered', heads: 30, fromMm: 12, toMm: 20 };
    const before = headsAfter('blaptica-dubia', counted(200, 10, 20));
    const after = headsAfter('blaptica-dubia', counted(200, 10, 20), offered);
    expect(after.total).toBeCloseTo(before.total - 30, 9);
    const small = (heads: Float64Array) =>
      heads.reduce((sum, n, j) => sum + ((before.chain.toMm[j] as number) < 11 ? n : 0), 0);
    expect(small(before.heads)).toBeGreaterThan(2);
    expect(small(after.heads)).toBeCloseTo(small(before.heads), 9);
  });

  it('loses nobody twice: who is found dead is among those the days have taken', () => {
    const dead: BinEvent = { day: TODAY, kind: 'found dead', heads: 5 };
    const without = headsAfter('blaptica-dubia', counted(200, 12, 15));
    expect(headsAfter('blaptica-dubia', counted(200, 12, 15), dead).total).toBe(without.total);
  });

  it('is empty, never below, when more was offered than was thought to be there', () => {
    const offered: BinEvent = { day: TODAY, kind: 'offered', heads: 300, fromMm: 10, toMm: 20 };
    expect(headsAfter('blaptica-dubia', counted(200, 10, 20), offered).total).toBeCloseTo(0, 9);
  });

  it('follows a recount, and a mass by the cube of length', () => {
    const recount: BinEvent = { day: TODAY, kind: 'counted', heads: 120, fromMm: null, toMm: null };
    expect(headsAfter('blaptica-dubia', counted(200, 10, 20), recount).total).toBeCloseTo(120, 9);
    const { massPerCubicMm } = speciesOf('tenebrio-molitor');
    const weighed: BinEvent = {
      day: TODAY - 7,
      kind: 'weighed',
      massMg: 50 * massPerCubicMm.value * 20 ** 3,
    };
    const { total } = headsAfter('tenebrio-molitor', counted(500, 19.99, 20.01), weighed);
    const loss = Math.exp(-7 * speciesOf('tenebrio-molitor').holdingLossPerDay.value);
    expect(Math.abs(total / loss - 50)).toBeLessThan(1);
  });
});

describe('laying', () => {
  it('is eggs per female and day over her laying life, by the share of females and of eggs that hatch', () => {
    const species = speciesOf('gryllodes-sigillatus');
    const chain = chainOf(species);
    const keeping = {
      temp: { minC: 30, maxC: 30 },
      weekMeanC: 30,
      speed: 1,
      holdingLossPerDay: 0,
      laying: 1,
    };
    const { birth } = ratesOfDay(chain, keeping);
    const laying = [...birth.subarray(chain.stages.at(-1)!.first)];
    const mean = laying.reduce((sum, rate) => sum + rate, 0) / laying.length;
    expect(mean).toBeCloseTo(28.4 * 0.56 * 0.76, 9);
    expect(laying[0]! / laying.at(-1)!).toBeCloseTo(1.24 / 0.82, 2);
    expect(ratesOfDay(chain, { ...keeping, laying: 0 }).birth.every((rate) => rate === 0)).toBe(true);
  });
});
