/** What counts of a colony teach: the young are made fewer or more rather than the grown, and laying is learned. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bin, BinEvent } from '../../../src/husbandry/larder/bin.ts';
import { chainOf, nextDay, steadyClimate, totalHeads } from '../../../src/husbandry/larder/index.ts';
import { firstAdult } from '../../../src/husbandry/larder/lot.ts';
import { binOn } from '../../../src/husbandry/larder/replay.ts';
import type { BinState, Life } from '../../../src/husbandry/larder/state.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { binWith, facts, TODAY } from '../../support/room.ts';

const species = facts.species.get('blaptica-dubia') as PreySpecies;
const chain = chainOf(species);
const climate = steadyClimate({ minC: 28, maxC: 28 });
const { policy } = facts;
const WEEKS = 40;
const FIRST = TODAY - 7 * WEEKS;

const binOf = (events: BinEvent[], role: Bin['role'] = 'colony'): Bin =>
  binWith({ code: 'B1', species: species.code, role, keepAdults: role === 'colony', events });
const moved: BinEvent[] = [
  { day: FIRST, kind: 'moved in', lot: { heads: 100, fromMm: 42, toMm: 42 } },
  { day: FIRST, kind: 'moved in', lot: { heads: 600, fromMm: 4.5, toMm: 30 } },
];
const counted = (heads: number, day: number, grown?: number): BinEvent => ({
  ...{ kind: 'counted', day, heads: Math.round(heads) },
  ...{ fromMm: null, toMm: null, grown: grown === undefined ? null : Math.round(grown) },
});
const stateOn = (bin: Bin, day = TODAY): BinState => binOn(bin, day, { chain, policy, climate });
const adultsIn = ({ heads }: BinState): number => totalHeads(heads, firstAdult(chain));
const allIn = ({ heads }: BinState): number => totalHeads(heads, chain.firstHead);

/** A colony that lays so many times what its species does, on each Sunday. */
function laying(times: number): BinState[] {
  const life: Life = { chain, bin: binOf([]), climate, speed: 1 };
  const layingLog = { mean: Math.log(times), variance: 0 };
  let now: BinState = { ...stateOn(binOf(moved), FIRST), layingLog };
  return Array.from({ length: WEEKS + 1 }, (_, week) => {
    const then = now;
    for (let d = 0; d < 7; d++) now = nextDay(life, now, FIRST + 7 * week + d).state;
    return then;
  });
}

describe('a count of a colony', () => {
  it('that finds half as many takes the young for fewer, hardly the grown', () => {
    const before = stateOn(binOf(moved), FIRST + 60);
    const half = allIn(before) / 2;
    const after = stateOn(binOf([...moved, counted(half, FIRST + 60)]), FIRST + 60);
    expect(allIn(after)).toBeCloseTo(Math.round(half), 6);
    expect(adultsIn(after) / adultsIn(before)).toBeGreaterThan(0.75);
    const youngest = totalHeads(before.heads.slice(0, chain.firstHead + 3), chain.firstHead);
    const left = totalHeads(after.heads.slice(0, chain.firstHead + 3), chain.firstHead);
    expect(left / youngest).toBeLessThan(0.5);
  });

  it('soon after one by eye says that all were fewer, the grown too, and next to nothing of laying', () => {
    const on = FIRST + 60;
    const byEye: BinEvent = { day: on, kind: 'looked', level: 'half' };
    const bin = { ...binOf([...moved, byEye]), capacity: 1000 };
    const before = stateOn(bin, on + 7);
    const after = stateOn({ ...bin, events: [...bin.events, counted(allIn(before) / 2, on + 7)] }, on + 7);
    expect(allIn(after) / allIn(before)).toBeCloseTo(0.5, 1);
    expect(adultsIn(after) / adultsIn(before)).toBeLessThan(0.7);
    expect(Math.abs(after.layingLog!.mean - before.layingLog!.mean)).toBeLessThan(0.1);
  });

  it('of a box in which nobody breeds scales all sizes alike', () => {
    const before = stateOn(binOf(moved, 'holding'), FIRST + 60);
    const after = stateOn(binOf([...moved, counted(allIn(before) / 2, FIRST + 60)], 'holding'), FIRST + 60);
    const times = Math.round(allIn(before) / 2) / allIn(before);
    after.heads.forEach((n, j) => {
      expect(n).toBeCloseTo(before.heads[j]! * times, 6);
    });
  });
});

describe('a count that tells the grown apart', () => {
  const on = FIRST + 60;

  it('leaves as many grown and as many young as were seen, whatever was thought', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (all, share) => {
          const grown = Math.round(all * share);
          const after = stateOn(binOf([...moved, counted(all, on, grown)]), on);
          expect(allIn(after)).toBeCloseTo(all, 6);
          // Both are brought to what count and record together make likely, by as much.
          expect(adultsIn(after) / allIn(after)).toBeCloseTo(grown / all, 6);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('is believed where nobody was thought to be grown, or young, or to be there at all', () => {
    const young: BinEvent = { day: on, kind: 'moved in', lot: { heads: 200, fromMm: 5, toMm: 8 } };
    const grown: BinEvent = { day: on, kind: 'moved in', lot: { heads: 50, fromMm: 42, toMm: 42 } };
    for (const before of [[young], [grown], []]) {
      const after = stateOn(binOf([...before, counted(240, on, 30)]), on);
      expect(adultsIn(after)).toBeCloseTo(30, 6);
      expect(allIn(after)).toBeCloseTo(240, 6);
    }
  });

  it('teaches laying by the young alone: twice the grown are not twice as much laid', () => {
    const before = stateOn(binOf(moved), on);
    const more = adultsIn(before);
    const after = stateOn(binOf([...moved, counted(allIn(before) + more, on, 2 * more)]), on);
    expect(after.layingLog!.mean).toBeCloseTo(0, 2);
    expect(adultsIn(after) / more).toBeCloseTo(2, 1);
  });
});

describe.each([0.4, 2])('of a colony that lays %s times what it should', (times) => {
  const truth = laying(times);
  const counts = truth.flatMap((state, week) =>
    week > 0 && week % 4 === 0 ? [counted(allIn(state), FIRST + 7 * week)] : [],
  );

  it('monthly counts tell how much it lays, within a quarter', () => {
    const { layingLog } = stateOn(binOf([...moved, ...counts]));
    expect(Math.abs(layingLog!.mean - Math.log(times))).toBeLessThan(Math.log(1.25));
    expect(layingLog!.variance).toBeLessThan(policy.layingLogSd.value ** 2 / 4);
  });

  it('the grown of the end are known within a quarter; all scaled alike they were not', () => {
    const grown = adultsIn(truth[WEEKS]!);
    const bin = binOf([...moved, ...counts]);
    expect(Math.abs(Math.log(adultsIn(stateOn(bin)) / grown))).toBeLessThan(Math.log(1.25));
    const alike = {
      ...policy,
      layingLogSd: { ...policy.layingLogSd, value: 0 },
    };
    const scaled = adultsIn(binOn(bin, TODAY, { chain, policy: alike, climate }));
    expect(Math.abs(Math.log(scaled / grown))).toBeGreaterThan(Math.log(1.25));
  });
});

describe('two counts of one day, without any error', () => {
  it('leave what was learned of laying as it was: nothing was born between them', () => {
    const sure = { ...policy, countCv: { ...policy.countCv, value: 0 } };
    const on = FIRST + 60;
    const heads = allIn(stateOn(binOf(moved), on)) / 2;
    const once = [...moved, counted(heads, on)];
    const learned = [once, [...once, counted(heads - 9, on)]].map(
      (events) => binOn(binOf(events), on, { chain, policy: sure, climate }).layingLog!.mean,
    );
    expect(learned[0]).toBeLessThan(0);
    expect(learned[1]).toBe(learned[0]);
  });
});

describe('a count that nothing explains', () => {
  it('teaches no more of laying than one at the edge of what could be expected', () => {
    const on = FIRST + 60;
    const there = allIn(stateOn(binOf(moved), on));
    const learned = [there / 20, there / 200].map(
      (heads) => stateOn(binOf([...moved, counted(heads, on)]), on).layingLog!.mean,
    );
    for (const mean of learned) expect(mean).toBeGreaterThan(-2.5 * policy.layingLogSd.value);
  });
});
