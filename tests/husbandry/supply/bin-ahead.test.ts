/** A bin's coming weeks: they follow the engine, count every head once, and say whom the bin outgrows. */
import { describe, expect, it } from 'vitest';
import { gryllodesSigillatus } from '../../../src/facts/prey/gryllodes-sigillatus.ts';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { steadyClimate } from '../../../src/husbandry/larder/climate.ts';
import { binOn } from '../../../src/husbandry/larder/replay.ts';
import { binAhead } from '../../../src/husbandry/supply/bin-ahead.ts';
import {
  animalWith,
  binWith,
  certainPolicy,
  countedBin,
  facts,
  policyWith,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const crickets = countedBin('B1', 'gryllodes-sigillatus', { heads: 500, fromMm: 5, toMm: 6 });
const certain = { ...facts, policy: certainPolicy };
const roomC = 28;
const rooms = [{ code: 'room', name: 'Room', dayTempC: roomC, nightTempC: roomC }];

describe('a box of crickets', () => {
  it('without doubt is the engine itself, week by week', () => {
    const ahead = binAhead(snapshotWith({ bins: [crickets], facts: certain, rooms }), 'B1')!;
    const climate = steadyClimate({ minC: roomC, maxC: roomC });
    const chain = chainOf(gryllodesSigillatus);
    ahead.weeks.forEach(({ heads, bySize, day }) => {
      const there = binOn(crickets, day, { chain, policy: certainPolicy, climate }).heads;
      const total = there.reduce((sum, n) => sum + n, 0);
      expect(Math.abs(heads.mid / total - 1)).toBeLessThan(1e-9);
      expect(Math.abs(bySize.reduce((sum, size) => sum + size.heads, 0) / total - 1)).toBeLessThan(1e-9);
    });
    expect(ahead.weeks).toHaveLength(13);
  });

  it('is known less well the further off', () => {
    const { weeks } = binAhead(snapshotWith({ bins: [crickets] }), 'B1')!;
    const doubt = weeks.map(({ heads }) => heads.high / heads.low);
    expect(doubt[0]).toBeLessThan(1.3);
    expect(doubt[6]).toBeGreaterThan(doubt[1]!);
  });

  it('outgrows the smaller animal before the larger, on the day its middle cricket is too long', () => {
    const animals = [30, 45].map((gaugeMm, i) =>
      animalWith({ code: `A${i}`, kind: 'brachypelma-hamorii', gaugeMm, stageOverride: 'juvenile' }),
    );
    const { feeds } = binAhead(snapshotWith({ bins: [crickets], animals, facts: certain, rooms }), 'B1')!;
    const [small, large] = feeds;
    expect(feeds.length).toBe(2);
    expect(small!.toMm).toBeLessThan(large!.toMm);
    expect(small!.outgrownOn!.mid).toBeLessThan(large!.outgrownOn?.mid ?? Number.POSITIVE_INFINITY);
    const chain = chainOf(gryllodesSigillatus);
    const climate = steadyClimate({ minC: roomC, maxC: roomC });
    const middleOn = (day: number) => {
      const { heads } = binOn(crickets, TODAY + day, { chain, policy: certainPolicy, climate });
      const half = heads.reduce((sum, n) => sum + n, 0) / 2;
      let [at, below] = [0, heads[0]!];
      while (below < half) below += heads[++at]!;
      return { from: chain.fromMm[at]!, to: chain.toMm[at]! };
    };
    const day = small!.outgrownOn!.mid;
    expect(middleOn(day).to).toBeGreaterThanOrEqual(small!.toMm);
    expect(middleOn(day - 1).from).toBeLessThanOrEqual(small!.toMm);
  });

  it('knows its capacity where its space is known', () => {
    const bin = { ...crickets, capacity: 700 };
    expect(binAhead(snapshotWith({ bins: [bin] }), 'B1')!.capacity).toEqual({ heads: 700, bySize: false });
    expect(binAhead(snapshotWith({ bins: [crickets] }), 'B2')).toBeNull();
  });
});

describe('a colony', () => {
  it('breeds on, and an empty one stays empty', () => {
    const colony = binWith({
      code: 'B1',
      species: 'gryllodes-sigillatus',
      role: 'colony',
      events: [{ kind: 'counted', day: TODAY, heads: 300, fromMm: null, toMm: null }],
    });
    const { weeks } = binAhead(
      snapshotWith({ bins: [colony], facts: { ...facts, policy: policyWith({ hazardCv: 0 }) }, rooms }),
      'B1',
    )!;
    expect(weeks[8]!.heads.mid).toBeGreaterThan(2 * weeks[0]!.heads.mid);
    const empty = { ...colony, events: [] };
    expect(
      binAhead(snapshotWith({ bins: [empty] }), 'B1')!.weeks.every(({ heads }) => heads.high === 0),
    ).toBe(true);
  });
});
