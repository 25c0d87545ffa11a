/** What single events teach of a bin, and what they do not. */
import { describe, expect, it } from 'vitest';
import { type Belief, beliefOf } from '../../../src/husbandry/larder/belief.ts';
import type { BinEvent } from '../../../src/husbandry/larder/bin.ts';
import { chainOf, headsSince, steadyClimate, totalHeads } from '../../../src/husbandry/larder/index.ts';
import { massMg } from '../../../src/husbandry/larder/lot.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { binWith, facts, TODAY } from '../../support/room.ts';

const species = facts.species.get('acheta-domesticus') as PreySpecies;
const chain = chainOf(species);
const climate = steadyClimate({ minC: 28, maxC: 28 });
const believe = (...events: BinEvent[]): Belief =>
  beliefOf(binWith({ code: 'B1', species: species.code, events }), TODAY, {
    chain,
    policy: facts.policy,
    climate,
  });
const came: BinEvent = {
  day: TODAY - 14,
  kind: 'delivered',
  lot: { heads: 300, fromMm: 3, toMm: 4.5 },
  dead: 0,
};
const looks = (fromMm: number, toMm: number, day = TODAY): BinEvent => ({
  day,
  kind: 'size seen',
  fromMm,
  toMm,
});
const counted = (heads: number, day = TODAY): BinEvent => ({
  day,
  kind: 'counted',
  heads,
  fromMm: null,
  toMm: null,
});
const dead = (heads: number, day = TODAY): BinEvent => ({ day, kind: 'found dead', heads });

describe('growth speed', () => {
  it('is learned from sizes: small ones tell of a slow box, large ones of a fast one', () => {
    const before = believe(came).speed;
    expect(before.mid).toBeCloseTo(1, 6);
    expect(before.tooLittle).toBe(true);
    expect(believe(came, looks(4.5, 7.5)).speed.mid).toBeLessThan(0.95);
    expect(believe(came, looks(10.5, 15)).speed.mid).toBeGreaterThan(1.1);
  });

  it('is learned from the mean weight of a sample, and from first adults', () => {
    const weighed = (mm: number): BinEvent => ({
      day: TODAY,
      kind: 'weighed',
      massMg: 200 * massMg(species, mm),
      sample: { heads: 20, massMg: 20 * massMg(species, mm), cv: 0.4 },
    });
    expect(believe(came, weighed(7)).speed.mid).toBeLessThan(believe(came, weighed(9)).speed.mid - 0.1);
    const { mid } = believe({ ...came, day: TODAY - 30 }, { day: TODAY, kind: 'first adults' }).speed;
    expect(mid).toBeGreaterThan(1.1);
  });

  it('is not told of by counts and dead', () => {
    const { speed } = believe(came, counted(180, TODAY - 7), dead(80), counted(150));
    const { low, mid, high } = believe(came).speed;
    expect(Math.abs(Math.log(speed.mid / mid))).toBeLessThan(0.01);
    expect(Math.log(speed.high / speed.low)).toBeCloseTo(Math.log(high / low), 1);
  });

  it('leaves the reckoned mix as it is where it explains a glance, and gives way where it cannot', () => {
    const shareShort = (event: BinEvent): number => {
      const { heads } = believe(came, event).stateAt(1);
      return heads.reduce((sum, n, j) => sum + (chain.toMm[j]! < 7.4 ? n : 0), 0) / totalHeads(heads);
    };
    expect(shareShort(looks(7.5, 10.5))).toBeGreaterThan(0.15);
    expect(shareShort(looks(20, 25))).toBe(0);
  });
});

describe('the hazard', () => {
  it('is learned from the dead: none are few, many are many; sizes tell nothing of it', () => {
    const before = believe(came).hazard;
    expect(believe(came, dead(0)).hazard.high).toBeLessThan(0.2);
    expect(believe(came, dead(5)).hazard.high).toBeLessThan(0.5);
    expect(believe(came, dead(150)).hazard.low).toBeGreaterThan(1.5);
    expect(believe(came, looks(4.5, 7.5)).hazard.mid).toBeCloseTo(before.mid, 2);
  });

  it('is learned from two counts', () => {
    const { hazard } = believe(came, counted(290, TODAY - 13), counted(150));
    expect(hazard.low).toBeGreaterThan(1);
  });

  it('of prey that hardly dies says that there is too little to learn from', () => {
    const worms = facts.species.get('tenebrio-molitor') as PreySpecies;
    const bin = binWith({
      code: 'B1',
      species: worms.code,
      events: [{ ...came, lot: { heads: 60, fromMm: 15, toMm: 20 } } as BinEvent, counted(60)],
    });
    const cool = steadyClimate({ minC: 22, maxC: 22 });
    const belief = beliefOf(bin, TODAY, { chain: chainOf(worms), policy: facts.policy, climate: cool });
    expect(belief.hazard.tooLittle).toBe(true);
    expect(belief.evidence.counts).toBe(1);
  });
});

describe('the count', () => {
  it('is that of the last count and of what was expected, each by how well it is known', () => {
    const { heads, looks: seen } = believe(came, counted(250, TODAY - 1), counted(230));
    expect(heads.mean).toBeGreaterThan(230);
    expect(heads.mean).toBeLessThan(245);
    expect(seen[1]?.heads).toBe(230);
    expect(seen[1]?.expected.mid).toBeGreaterThan(240);
  });

  it('that nothing explains is believed, and teaches no hazard', () => {
    const usual = believe(came, counted(300, TODAY - 1));
    const { heads, hazard } = believe(came, counted(300, TODAY - 1), counted(100));
    expect(heads.mean).toBeCloseTo(100, 6);
    expect(hazard.mid).toBeCloseTo(usual.hazard.mid, 1);
  });

  it('by the ratio of a sample does not rest on the mass of one head', () => {
    const weighed: BinEvent = {
      day: TODAY,
      kind: 'weighed',
      massMg: 200 * 40,
      sample: { heads: 50, massMg: 50 * 40, cv: 0.2 },
    };
    const { heads } = believe(came, weighed);
    expect(Math.abs(heads.mean - 200)).toBeLessThan(10);
    expect(heads.cv).toBeLessThan(0.06);
  });

  it('loses what was fed, and is never below none', () => {
    const fed = (heads: number): BinEvent => ({ day: TODAY, kind: 'offered', heads, fromMm: 3, toMm: 15 });
    const before = believe(came, counted(100));
    expect(believe(came, counted(100), fed(30)).heads.mean).toBeCloseTo(before.heads.mean - 30, 6);
    expect(believe(came, counted(100), fed(500)).heads).toMatchObject({ mean: 0, low: 0, high: 0 });
  });

  it('is the same whether a sized count was the first thing written or the last of many', () => {
    const sized: BinEvent = { day: TODAY, kind: 'counted', heads: 120, fromMm: 8, toMm: 12 };
    const alone = believe(sized).stateAt(1);
    const after = believe(came, looks(4.5, 7.5, TODAY - 7), counted(126, TODAY - 1), sized);
    const state = after.stateAt(1);
    const each = totalHeads(state.heads) / totalHeads(alone.heads);
    state.heads.forEach((n, j) => {
      expect(n).toBeCloseTo(alone.heads[j]! * each, 6);
    });
    expect(after.heads.mean).toBeGreaterThan(118);
  });
});

describe('what was taken since a day', () => {
  it('is what was fed or otherwise taken out after it, until the next count', () => {
    const fed: BinEvent = { day: TODAY - 3, kind: 'offered', heads: 35, fromMm: 5, toMm: 9 };
    const moved: BinEvent = { day: TODAY - 2, kind: 'moved out', heads: 4 };
    const events = [came, fed, moved, counted(20, TODAY - 1), fed];
    expect(headsSince(events, TODAY - 4)).toEqual({ fed: 35, out: 4, came: 0 });
    expect(headsSince(events, TODAY - 3)).toEqual({ fed: 0, out: 4, came: 0 });
    expect(headsSince(events, TODAY - 20)).toEqual({ fed: 35, out: 4, came: 300 });
  });
});

describe('the eggs of a colony', () => {
  const colony = (...events: BinEvent[]): Belief =>
    beliefOf(binWith({ code: 'B1', species: species.code, role: 'colony', events }), TODAY, {
      chain,
      policy: facts.policy,
      climate,
    });
  const eggs = ({ stateAt }: Belief): number =>
    totalHeads(stateAt(1).heads) - totalHeads(stateAt(1).heads, chain.firstHead);
  const began = counted(400, TODAY - 60);

  it('are there after its heads were counted with their sizes', () => {
    const sized: BinEvent = { day: TODAY, kind: 'counted', heads: 300, fromMm: 3, toMm: 20 };
    expect(eggs(colony(began))).toBeGreaterThan(100);
    expect(eggs(colony(began, sized))).toBeCloseTo(eggs(colony(began)), 0);
  });

  it('hatch though all heads died off, but not where nothing was counted in it', () => {
    const lost: BinEvent = { day: TODAY - 8, kind: 'died off', left: 0 };
    expect(colony(began, lost).heads.mean).toBeGreaterThan(50);
    expect(colony(began, counted(0, TODAY - 8)).heads.mean).toBe(0);
  });
});
