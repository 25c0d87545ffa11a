/** A crowded bin: it lays less, loses more, and a part of it is crowded by the whole. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { achetaDomesticus } from '../../../src/facts/prey/acheta-domesticus.ts';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/climate.ts';
import { capacityOf, loadOf, pressureOf, thinned } from '../../../src/husbandry/larder/crowding.ts';
import { spreadLot, totalHeads } from '../../../src/husbandry/larder/lot.ts';
import { pathsOf } from '../../../src/husbandry/larder/path.ts';
import {
  type BinState,
  emptyState,
  type Life,
  nextDay,
  ratesOn,
} from '../../../src/husbandry/larder/state.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { binWith } from '../../support/room.ts';

const invented = (value: number) =>
  ({ value, unit: '1', source: 'ownStart', status: 'from memory' }) as const;

/** A cricket of a test: 10 adult heads a litre, a tenth a day for each capacity over, eggs eaten. */
const cricket: PreySpecies = {
  ...achetaDomesticus,
  crowding: {
    by: 'volume',
    headsPerUnit: invented(10),
    deathsPerDayOver: invented(0.1),
  },
};
const beetle: PreySpecies = {
  ...achetaDomesticus,
  crowding: {
    by: 'medium',
    headsPerUnit: invented(1e9),
    deathsPerDayOver: invented(0),
    eaten: [{ stage: 'egg', by: 'adult', perEater: invented(0.2) }],
  },
};

const lifeOf = (species: PreySpecies, over: Parameters<typeof binWith>[0]): Life => ({
  chain: chainOf(species),
  bin: binWith({ role: 'colony', ...over }),
  climate: steadyClimate({ minC: 28, maxC: 28 }),
  speed: 1,
});
const stateOf = ({ chain }: Life, perSubstage: number) => ({
  ...emptyState(chain),
  heads: new Float64Array(chain.size).fill(perSubstage),
});

describe('capacity', () => {
  const litres = (units: number) => ({ by: 'volume', units }) as const;
  it('comes from the space, by size; else from the keeper, by head', () => {
    const chain = chainOf(cricket);
    const bin = binWith({ code: 'B', species: cricket.code, capacity: 70 });
    expect(capacityOf({ ...bin, space: litres(20) }, chain)).toEqual({ heads: 200, bySize: true });
    expect(capacityOf(bin, chain)).toEqual({ heads: 70, bySize: false });
    expect(capacityOf({ ...bin, space: { by: 'area', units: 5 } }, chain)).toEqual({
      heads: 70,
      bySize: false,
    });
    expect(capacityOf({ ...bin, capacity: null }, chain)).toBeNull();
  });

  it('an adult takes up one, a hatchling hardly any, an egg none', () => {
    const chain = chainOf(cricket);
    const one = (j: number) => {
      const heads = new Float64Array(chain.size);
      heads[j] = 1;
      return loadOf(chain, heads, { bySize: true });
    };
    expect(one(chain.size - 1)).toBeCloseTo(1, 1);
    expect(one(chain.firstHead)).toBeLessThan(0.05);
    expect(one(0)).toBe(0);
  });
});

describe('a crowded colony', () => {
  it('below capacity is as free as one without', () => {
    const [free, roomy] = [
      lifeOf(cricket, { code: 'B', species: cricket.code }),
      lifeOf(cricket, { code: 'B', species: cricket.code, capacity: 1e9 }),
    ];
    expect(nextDay(roomy, stateOf(roomy, 2), 0)).toEqual(nextDay(free, stateOf(free, 2), 0));
  });

  it('at twice its capacity lays half and loses a tenth more of all but eggs', () => {
    const free = lifeOf(cricket, { code: 'B', species: cricket.code });
    const heads = totalHeads(stateOf(free, 2).heads, free.chain.firstHead);
    const full = lifeOf(cricket, { code: 'B', species: cricket.code, capacity: heads / 2 });
    const [alone, crowded] = [nextDay(free, stateOf(free, 2), 0), nextDay(full, stateOf(full, 2), 0)];
    expect(crowded.born / alone.born).toBeCloseTo(1 / 2, 12);
    const { firstHead } = free.chain;
    expect(
      totalHeads(crowded.state.heads, firstHead + 5) / totalHeads(alone.state.heads, firstHead + 5),
    ).toBeCloseTo(Math.exp(-0.1), 6);
    expect(crowded.state.heads[firstHead - 1]).toBeCloseTo(alone.state.heads[firstHead - 1]!, 9);
  });

  it('loses no head without counting it, at any load', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.integer({ min: 1, max: 5000 }),
        (each, capacity) => {
          const life = lifeOf(cricket, { code: 'B', species: cricket.code, capacity });
          const before = stateOf(life, each);
          const { state, born, died } = nextDay(life, before, 0);
          const gap = totalHeads(before.heads) + born - died - totalHeads(state.heads);
          expect(Math.abs(gap)).toBeLessThan(1e-9 * (1 + totalHeads(before.heads) + born));
        },
      ),
      { seed: 3, numRuns: 50 },
    );
  });

  it('settles at the same load, above its capacity, whether it was started with few or with many', () => {
    const life = lifeOf(cricket, { code: 'B', species: cricket.code, space: { by: 'volume', units: 20 } });
    const settledFrom = (start: number) => {
      let state: BinState = stateOf(life, start);
      for (let day = 0; day < 700; day++) state = nextDay(life, state, day).state;
      return loadOf(life.chain, state.heads, { bySize: true });
    };
    const [few, many] = [settledFrom(0.01), settledFrom(50)];
    expect(few / many).toBeGreaterThan(0.98);
    expect(few / many).toBeLessThan(1.02);
    expect(many).toBeGreaterThan(200);
    expect(many).toBeLessThan(2000);
  });

  it('halves of a day tell of the error of splitting it: below two in a hundred at twice the capacity', () => {
    const life = lifeOf(cricket, { code: 'B', species: cricket.code, space: { by: 'volume', units: 20 } });
    const rates = ratesOn(life, 0);
    const heads = stateOf(life, 1).heads;
    const whole = thinned(heads, pressureOf(life, heads, rates)).heads;
    const half = (from: Float64Array) => {
      const { kept, ...rest } = pressureOf(life, from, rates);
      return thinned(from, { ...rest, kept: kept?.map(Math.sqrt) ?? null }).heads;
    };
    const halves = half(half(heads));
    expect(Math.abs(totalHeads(whole) / totalHeads(halves) - 1)).toBeLessThan(0.02);
  });
});

describe('eggs among eaters', () => {
  it('get through at exp(-c eaters per gram) whatever the size of the box, where the eaters stay as they are', () => {
    const shares = [10, 1000].map((grams) => {
      const life = lifeOf(beetle, { code: 'B', species: beetle.code, space: { by: 'medium', units: grams } });
      const { chain } = life;
      const rates = ratesOn(life, 0);
      const adults = chain.stages.at(-1)!;
      const heads = new Float64Array(chain.size);
      heads[adults.first] = 3 * grams;
      const egg = chain.stages[0]!;
      const days = egg.count / rates.exit[0]!;
      return pressureOf(life, heads, rates).kept![0]! ** days;
    });
    expect(shares[0]).toBeCloseTo(Math.exp(-0.2 * 3), 12);
    expect(shares[1]).toBeCloseTo(shares[0]!, 12);
  });
});

describe('the path of a crowded bin', () => {
  it('suffers what the whole bin suffers: its cohorts add up to the bin', () => {
    const life = lifeOf(cricket, { code: 'B', species: cricket.code, space: { by: 'volume', units: 8 } });
    const start = stateOf(life, 1);
    const days = 15;
    const paths = pathsOf(start, { life, today: 0, days, slices: 24 });
    let state: BinState = start;
    for (let day = 0; day < days; day++) {
      const cohorts = paths.reduce(
        (sum, { arrives, heads, alive }) => (arrives <= day ? sum + heads * alive[day - arrives]! : sum),
        0,
      );
      const whole = totalHeads(state.heads, life.chain.firstHead);
      expect(Math.abs(cohorts / whole - 1)).toBeLessThan(0.01);
      state = nextDay(life, state, day).state;
    }
  });
});

describe('a holding bin that its prey outgrows', () => {
  it('is followed ahead as it is day by day: crowded once its heads are large', () => {
    const life = lifeOf(cricket, {
      code: 'B',
      species: cricket.code,
      role: 'holding',
      space: { by: 'volume', units: 3 },
    });
    const state = {
      ...emptyState(life.chain),
      heads: spreadLot(life.chain, { heads: 200, fromMm: 3, toMm: 4 }),
    };
    expect(pressureOf(life, state.heads, ratesOn(life, 0)).kept).toBeNull();
    const days = 40;
    const [path] = pathsOf(state, { life, today: 0, days, slices: 4 });
    let after: BinState = state;
    for (let day = 0; day < days - 1; day++) after = nextDay(life, after, day).state;
    const free = lifeOf(cricket, { code: 'B', species: cricket.code, role: 'holding' });
    const [roomy] = pathsOf(state, { life: free, today: 0, days, slices: 4 });
    expect(path!.alive[days - 1]).toBeCloseTo(totalHeads(after.heads) / 200, 9);
    expect(path!.alive[days - 1]).toBeLessThan(0.8 * roomy!.alive[days - 1]!);
  });
});
