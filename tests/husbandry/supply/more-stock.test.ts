/** What more stock does: for one prey and one group it never lasts shorter; in a mixed room it may, seldom. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { given, pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { rooms } from '../../support/random-rooms.ts';
import { animalWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const meal = { graceDays: 2, safeGapDays: 30, urgency: 'ordinary' } as const;

describe('one prey and one group', () => {
  const eater = pencilKind({ code: 'eater', words: 'eater', prey: [4, 8], intervalDays: [3, 6], ...meal });
  const facts = pencilFacts([eater], [pencilPrey('cricket', [4, 8])]);
  const room = (seed: number, animals: number, heads: number): Snapshot =>
    snapshotWith({
      seed,
      animals: Array.from({ length: animals }, (_, i) =>
        animalWith({ code: `A${i}`, kind: 'eater', gaugeMm: 10, lastTaken: TODAY - (i % 5) }),
      ),
      bins: [countedBin('box', 'cricket', { heads, fromMm: 4, toMm: 8 })],
      rooms: [{ code: 'room', name: 'Room', dayTempC: 15, nightTempC: 15 }],
      facts,
    });

  it('more stock never lasts shorter, replicate by replicate', () => {
    const stock = fc.record({
      seed: fc.nat(),
      animals: fc.integer({ min: 1, max: 8 }),
      heads: fc.integer({ min: 0, max: 30 }),
      more: fc.integer({ min: 1, max: 20 }),
    });
    fc.assert(
      fc.property(stock, ({ seed, animals, heads, more }) => {
        const [few, many] = [heads, heads + more].map(
          (n) => judge(room(seed, animals, n), { days: 14, replicates: 4 }).tally,
        );
        expect(many!.runOutOf.every((day, r) => day >= few!.runOutOf[r]!)).toBe(true);
        expect(many!.missedOf.every((missed, r) => missed <= few!.missedOf[r]!)).toBe(true);
      }),
      { numRuns: 120, seed: 1 },
    );
  });
});

describe('a mixed room', () => {
  /**
   * One head more, and one meal more is missed. The big one is fragile, so it is served first; it wants three crickets
   * at once. Two small ones want one each. With two crickets in the box the big one can't be fed, and the small ones
   * eat: one meal is missed. With three the big one eats them all, and both small ones go without: two are missed.
   */
  it('can miss one meal more for one cricket more, where a whole meal of one costs two others theirs', () => {
    const rule = { prey: [15, 18], intervalDays: [20, 20], ...meal } as const;
    const small = pencilKind({ ...rule, code: 'small', words: 'small' });
    const big = pencilKind({ ...rule, code: 'big', words: 'big', urgency: 'fragile' });
    const hungry = {
      ...big,
      stages: big.stages.map((stage) => ({ ...stage, mealItems: given([3, 3] as const) })),
    };
    const room = (heads: number): Snapshot =>
      snapshotWith({
        animals: ['big', 'small', 'small'].map((kind, i) =>
          animalWith({ code: `A${i}`, kind, gaugeMm: 10, lastTaken: TODAY - 20 }),
        ),
        bins: [countedBin('box', 'cricket', { heads, fromMm: 15, toMm: 15.1 })],
        rooms: [{ code: 'room', name: 'Room', dayTempC: 15, nightTempC: 15 }],
        facts: pencilFacts([hungry, small], [pencilPrey('cricket', [15, 15.1])]),
      });
    const missed = (heads: number) => judge(room(heads), { days: 7, replicates: 1 }).tally.missedOf[0]!;
    expect([1, 2, 3, 4, 5].map(missed)).toEqual([2, 1, 2, 1, 0]);
  });

  it('does not miss more on the mean: over forty rooms twice the stock stays within three standard errors', () => {
    const rises = fc.sample(rooms, { numRuns: 40, seed: 8 }).map((room) => {
      const bins = room.bins.map((bin) => ({
        ...bin,
        events: bin.events.map((event) =>
          event.kind === 'counted' ? { ...event, heads: event.heads * 2 } : event,
        ),
      }));
      const [few, many] = [room, { ...room, bins }].map((each) => {
        const { missedOf } = judge(each, { days: 10 }).tally;
        return missedOf.reduce((a, b) => a + b, 0) / missedOf.length;
      });
      return many! - few!;
    });
    const mean = rises.reduce((a, b) => a + b, 0) / rises.length;
    const sd = Math.sqrt(rises.reduce((sum, rise) => sum + (rise - mean) ** 2, 0) / (rises.length - 1));
    expect(mean).toBeLessThan((3 * sd) / Math.sqrt(rises.length));
  });
});
