/** What must go from a bin in the coming weeks: for want of room, and surplus males. */
import { describe, expect, it } from 'vitest';
import { type CullsAsked, cullsAhead } from '../../../src/husbandry/colony/culls.ts';
import type { Bin, BinEvent } from '../../../src/husbandry/larder/bin.ts';
import { binOn, chainOf, nextDay, steadyClimate, totalHeads } from '../../../src/husbandry/larder/index.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { constant } from '../../support/rearing.ts';
import { binWith, facts, TODAY } from '../../support/room.ts';

const species = facts.species.get('blaptica-dubia') as PreySpecies;
const chain = chainOf(species);
const climate = steadyClimate(constant(28));
const DAYS = 56;
/** A cull is enough for the weeks looked at. */
const asked = { today: TODAY, days: DAYS, lastsDays: DAYS };

const colony = (capacity: number | null, events: readonly BinEvent[]): Bin =>
  binWith({ code: 'C1', species: species.code, role: 'colony', keepAdults: true, capacity, events });
const counted: BinEvent = { kind: 'counted', day: TODAY, heads: 500, fromMm: null, toMm: null };

function cullsOf(bin: Bin, more: Partial<CullsAsked> = {}) {
  const state = binOn(bin, TODAY, { chain, policy: facts.policy, climate });
  return cullsAhead({ ...asked, life: { chain, bin, climate, speed: 1 }, state, ...more });
}

describe('a growing colony of 500', () => {
  it('has nothing to cull with room for twice as many, nor where nobody said what it holds', () => {
    expect(cullsOf(colony(1200, [counted]))).toEqual([]);
    expect(cullsOf(colony(null, [counted]))).toEqual([]);
  });

  it('culls enough, before it is full, that it does not fill up within the weeks looked at', () => {
    const bin = colony(600, [counted]);
    const culls = cullsOf(bin);
    const [day] = new Set(culls.map((cull) => cull.day));
    expect(day).toBeGreaterThan(TODAY);
    expect(day).toBeLessThan(TODAY + DAYS);
    const after = culls.map(
      ({ heads, size }): BinEvent => ({
        kind: 'culled',
        day: day!,
        heads,
        fromMm: size!.fromMm,
        toMm: size!.toMm,
      }),
    );
    const events = [counted, ...after];
    let state = binOn(colony(600, events), day!, { chain, policy: facts.policy, climate });
    const life = { chain, bin, climate, speed: 1 };
    for (let at = day!; at < TODAY + DAYS; at++) {
      state = nextDay(life, state, at).state;
      expect(totalHeads(state.heads, chain.firstHead)).toBeLessThan(601);
    }
  });

  it('culled for a fortnight at a time goes in several culls, the first of them smaller', () => {
    const headsOn = (culls: ReturnType<typeof cullsOf>) => {
      const days = [...new Set(culls.map(({ day }) => day))];
      return days.map((on) =>
        culls.filter(({ day }) => day === on).reduce((sum, { heads }) => sum + heads, 0),
      );
    };
    const bin = colony(600, [counted]);
    const [all] = headsOn(cullsOf(bin));
    const [first, ...later] = headsOn(cullsOf(bin, { lastsDays: 14 }));
    expect(first).toBeLessThan(all!);
    expect(later.length).toBeGreaterThan(0);
  });

  it('is not culled of what is eaten in time', () => {
    const bin = colony(600, [counted]);
    const eaten = () => new Float64Array(chain.size).fill(0.02);
    expect(cullsOf(bin).length).toBeGreaterThan(0);
    expect(cullsOf(bin, { eaten })).toEqual([]);
    expect(cullsOf(bin, { eaten: () => null })).toEqual(cullsOf(bin));
  });

  it('spares the adults, who breed', () => {
    const sizes = cullsOf(colony(520, [counted])).map(({ size }) => size!.name);
    expect(sizes.length).toBeGreaterThan(0);
    expect(sizes).not.toContain('adult');
  });
});

describe('a colony of mealworms, whose beetles are shorter than the larvae', () => {
  it('is thinned of its large larvae too, though its beetles are kept', () => {
    const beetles = chainOf(facts.species.get('tenebrio-molitor') as PreySpecies);
    const events: BinEvent[] = [{ kind: 'counted', day: TODAY, heads: 500, fromMm: 18, toMm: 24 }];
    const bin = binWith({ ...colony(300, events), species: 'tenebrio-molitor' });
    const state = binOn(bin, TODAY, { chain: beetles, policy: facts.policy, climate });
    const culls = cullsAhead({ ...asked, life: { chain: beetles, bin, climate, speed: 1 }, state });
    expect(culls.reduce((sum, { heads }) => sum + heads, 0)).toBeGreaterThanOrEqual(200);
  });
});

describe('adults told apart', () => {
  const adults: BinEvent = { kind: 'counted', day: TODAY, heads: 40, fromMm: 42, toMm: 42 };

  it('leave a male to every four females, and the rest are spare', () => {
    const culls = cullsOf(colony(null, [adults, { kind: 'sexed', day: TODAY, females: 20, males: 20 }]));
    expect(culls).toEqual([{ why: 'males', day: TODAY, heads: 15, size: null }]);
  });

  it('are all needed where males are few', () => {
    expect(cullsOf(colony(null, [adults, { kind: 'sexed', day: TODAY, females: 32, males: 8 }]))).toEqual([]);
  });

  it('say nothing of males where nobody told them apart', () => {
    expect(cullsOf(colony(null, [adults]))).toEqual([]);
  });
});
