/** What holds in every room: nothing is lost or made, order does not matter, and the same seed gives the same bytes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feedingDaysFrom } from '../../../src/husbandry/appetite/feeding-days.ts';
import { rosterOf } from '../../../src/husbandry/appetite/roster.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { larderFor } from '../../../src/husbandry/supply/larder.ts';
import { menuOf } from '../../../src/husbandry/supply/menu.ts';
import { runReplicates } from '../../../src/husbandry/supply/run.ts';
import { rulerEdges } from '../../../src/husbandry/supply/spectrum.ts';
import { stockOf } from '../../../src/husbandry/supply/stock.ts';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import { type Tally, tallyFor } from '../../../src/husbandry/supply/tally.ts';
import type { Run } from '../../../src/husbandry/supply/working.ts';
import { rooms } from '../../support/random-rooms.ts';

const DAYS = 10;
const REPLICATES = 12;
const answerOf = (snapshot: Snapshot): string => JSON.stringify(sundayCheck(snapshot, { days: DAYS }));

/** Runs the replicates in the chunks given by their bounds, on one larder and one tally. */
function runInChunks(snapshot: Snapshot, bounds: readonly number[]): Tally {
  const { policy } = snapshot.facts;
  const roster = rosterOf(snapshot, policy.moultsAhead.value);
  const stock = stockOf(snapshot, DAYS);
  const run: Run = {
    roster,
    feeding: feedingDaysFrom(snapshot.calendar, snapshot.today, DAYS + 60),
    policy,
    menu: menuOf(roster.groups, stock.species, new Set()),
    larder: larderFor(stock, policy),
    days: DAYS,
    seed: snapshot.seed,
  };
  const tally = tallyFor({
    groups: roster.groups.length,
    animals: roster.animals,
    days: DAYS,
    replicates: REPLICATES,
    stockReplicates: REPLICATES,
    edgesMm: rulerEdges(policy),
  });
  bounds.slice(1).forEach((to, k) => {
    runReplicates(run, tally, { from: bounds[k]!, to });
  });
  return tally;
}

describe('in any room', () => {
  it('every bin holds at the end what it held, got and hatched, less what was eaten and died', () => {
    fc.assert(
      fc.property(rooms, (room) => {
        const { totals } = judge(room, { days: DAYS }).larder;
        totals.start.forEach((start, b) => {
          const came = start + totals.arrived[b]! + totals.hatched[b]!;
          const went = totals.eaten[b]! + totals.died[b]! + totals.left[b]!;
          expect(Math.abs(came - went)).toBeLessThan(1e-6 * (1 + came));
        });
      }),
      { numRuns: 40, seed: 1 },
    );
  });

  it('whoever misses a meal was late first, no more is missed than came due, and the counts of animals, groups and replicates add up', () => {
    fc.assert(
      fc.property(rooms, (room) => {
        const { tally } = judge(room, { days: DAYS });
        const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);
        tally.missed.forEach((missed, g) => {
          expect(missed).toBeLessThanOrEqual(tally.due[g]!);
          if (missed > 0) expect(tally.late[g]).toBeGreaterThan(0);
        });
        expect(sum(tally.missedByAnimal)).toBe(sum(tally.missed));
        for (const [byGroup, byReplicate] of [
          [tally.missed, tally.missedOf],
          [tally.late, tally.lateOf],
          [tally.dangers, tally.dangersOf],
        ] as const)
          expect(sum(byReplicate)).toBe(sum(byGroup));
      }),
      { numRuns: 40, seed: 2 },
    );
  });

  it('the order of animals, bins, deliveries and rooms does not change a byte of the answer', () => {
    const turned = <T>(list: readonly T[]): T[] => [...list].reverse();
    fc.assert(
      fc.property(rooms, (room) => {
        const other = {
          ...room,
          animals: turned(room.animals),
          bins: turned(room.bins),
          deliveries: turned(room.deliveries),
          rooms: [{ code: 'zoo', name: 'Zoo', dayTempC: 10, nightTempC: 10 }, ...room.rooms],
        };
        const first = { ...room, rooms: turned(other.rooms) };
        expect(answerOf(other)).toBe(answerOf(first));
      }),
      { numRuns: 8, seed: 3 },
    );
  });

  it('the same seed gives the same bytes', () => {
    fc.assert(
      fc.property(rooms, (room) => answerOf(room) === answerOf(structuredClone(room))),
      { numRuns: 3, seed: 4 },
    );
  });

  it('replicates run in chunks give the same tally to the bit', () => {
    fc.assert(
      fc.property(rooms, fc.integer({ min: 1, max: REPLICATES - 1 }), (room, cut) => {
        expect(runInChunks(room, [0, cut, REPLICATES])).toEqual(runInChunks(room, [0, REPLICATES]));
      }),
      { numRuns: 15, seed: 5 },
    );
  });
});

it('another seed draws another future', () => {
  const [room] = fc.sample(rooms, { numRuns: 1, seed: 6 });
  const eaten = [1, 2].map((seed) => Array.from(judge({ ...room!, seed }, { days: DAYS }).tally.itemsOf));
  expect(eaten[0]).not.toEqual(eaten[1]);
});
