/** After a crash: only those who lived off the bin go short, and what is said to help does. */
import { describe, expect, it } from 'vitest';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/climate.ts';
import { binOn } from '../../../src/husbandry/larder/replay.ts';
import { afterCrash } from '../../../src/husbandry/supply/crash.ts';
import {
  animalWith,
  binWith,
  certainPolicy,
  countedBin,
  facts,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const policy = certainPolicy;
const spiderlings = Array.from({ length: 20 }, (_, i) =>
  animalWith({ code: `S${i}`, kind: 'brachypelma-hamorii', gaugeMm: 12, lastTaken: TODAY - (i % 6) }),
);
const adults = Array.from({ length: 5 }, (_, i) =>
  animalWith({ code: `T${i}`, kind: 'brachypelma-hamorii', gaugeMm: 140, lastTaken: TODAY - 2 * i }),
);
const colony = (left: number) =>
  binWith({
    code: 'B1',
    species: 'blaptica-dubia',
    role: 'colony',
    origin: 'a friend in Leeds',
    events: [
      { kind: 'counted', day: TODAY - 30, heads: 400, fromMm: null, toMm: null },
      { kind: 'died off', day: TODAY, left },
    ],
  });
const large = countedBin('B2', 'acheta-domesticus', { heads: 400, fromMm: 17, toMm: 20 });
const sameOrigin = {
  ...countedBin('B3', 'tenebrio-molitor', { heads: 50, fromMm: 25, toMm: 28 }),
  origin: ' A friend in Leeds',
};
const beside = { ...countedBin('B4', 'blaptica-dubia', { heads: 3, fromMm: 4, toMm: 5 }), room: 'room' };

const room = snapshotWith({
  animals: [...spiderlings, ...adults],
  bins: [colony(12), large, sameOrigin, beside],
  facts: { ...facts, policy },
});

describe('a colony that died off', () => {
  const answer = afterCrash(room, 'B1')!;

  it('leaves those short that lived off it, and nobody else', () => {
    expect(answer.short.length).toBeGreaterThan(0);
    for (const group of answer.short) {
      expect(group.animals.every((code) => code.startsWith('S'))).toBe(true);
      expect(group.chance).toBeGreaterThan(group.chanceBefore);
      expect(group.from).toBeGreaterThanOrEqual(TODAY);
      expect(group.from).toBeLessThan(TODAY + answer.days);
    }
    expect([...answer.short].sort((a, b) => a.from - b.from)).toEqual(answer.short);
  });

  it('tells what else fits tonight, head for head what is there', () => {
    const [first] = answer.short;
    const others = first!.instead.filter(({ bin }) => bin === 'B4');
    expect(others.map(({ heads }) => Math.round(heads))).toEqual([3]);
    expect(first!.instead.some(({ bin }) => bin === 'B2')).toBe(false);
  });

  it('names what shares its origin, then its species and room', () => {
    expect(answer.atRisk).toEqual([
      { bin: 'B3', species: 'tenebrio-molitor', shares: 'origin' },
      { bin: 'B4', species: 'blaptica-dubia', shares: 'species and room' },
    ]);
  });

  it('proposes a cup, a parcel and the breeders that are left, the soonest first', () => {
    const { start } = answer.short[0]!;
    expect(new Set(start.map(({ kind }) => kind))).toEqual(new Set(['cup', 'order', 'leave to breed']));
    const days = start.map(({ yields }) => yields ?? Number.POSITIVE_INFINITY);
    expect([...days].sort((a, b) => a - b)).toEqual(days);
    const cup = start.find(({ kind }) => kind === 'cup')!;
    expect(cup.yields! - TODAY).toBeGreaterThan(8);
    expect(cup.yields! - TODAY).toBeLessThan(40);
  });
});

describe('what is said to help those longer than flies', () => {
  const juveniles = Array.from({ length: 20 }, (_, i) =>
    animalWith({ code: `J${i}`, kind: 'caribena-versicolor', gaugeMm: 45, lastTaken: TODAY - (i % 6) }),
  );
  const { short } = afterCrash({ ...room, animals: juveniles, bins: [colony(60)] }, 'B1')!;

  it('is neither prey out of the bin that crashed nor a wait for what is there today', () => {
    expect(short.length).toBeGreaterThan(0);
    expect(short.flatMap(({ instead }) => instead)).toEqual([]);
    const waits = short.flatMap(({ start }) => start.filter(({ kind }) => kind === 'leave to breed'));
    expect(waits.filter(({ yields }) => yields === TODAY)).toEqual([]);
  });

  it('is no cup of flies', () => {
    expect(short.flatMap(({ start }) => start.filter(({ kind }) => kind === 'cup'))).toEqual([]);
  });
});

describe('a loss that hurts nobody', () => {
  it('leaves nobody short', () => {
    const plenty = countedBin('B5', 'acheta-domesticus', { heads: 5000, fromMm: 2, toMm: 4 });
    const answer = afterCrash({ ...room, bins: [...room.bins, plenty], animals: adults }, 'B1')!;
    expect(answer.short).toEqual([]);
    expect(answer.atRisk).toHaveLength(2);
  });

  it('without a loss on record there is no answer', () => {
    expect(afterCrash(room, 'B2')).toBeNull();
    expect(afterCrash(room, 'nowhere')).toBeNull();
  });
});

describe('what is left of a crash', () => {
  it('is what was written, in the sizes that were there', () => {
    const chain = chainOf(facts.species.get('blaptica-dubia')!);
    const climate = steadyClimate({ minC: 26, maxC: 26 });
    const heads = (events: number) =>
      binOn({ ...colony(12), events: colony(12).events.slice(0, events) }, TODAY, { chain, policy, climate })
        .heads;
    const [was, is] = [heads(1), heads(2)];
    const total = (of: Float64Array) => of.reduce((sum, n) => sum + n, 0);
    expect(total(is)).toBeCloseTo(12, 9);
    is.forEach((n, j) => {
      expect(n / 12).toBeCloseTo(was[j]! / total(was), 9);
    });
  });
});
