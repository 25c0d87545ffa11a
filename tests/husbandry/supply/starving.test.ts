/**
 * An animal that finds nothing misses one meal after the other. By hand: fed yesterday, at the latest every 7 days, 2 of
 * grace. Days from today 0: its meal is due by day 6 and missed by day 8; the meals that would have followed by 15, 22 ...
 * 78: within 84 days 11. It is late once, and past its safe gap of 12 days once.
 */
import { expect, it } from 'vitest';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { animalWith, certainPolicy, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const eater = pencilKind({
  code: 'eater',
  prey: [4, 8],
  intervalDays: [3, 7],
  graceDays: 2,
  safeGapDays: 12,
  urgency: 'ordinary',
  words: 'eater',
});
const DAYS = 84;
const REPLICATES = 10;

const tallyWith = (heads: number) =>
  judge(
    snapshotWith({
      animals: [animalWith({ code: 'A1', kind: 'eater', gaugeMm: 10, lastTaken: TODAY - 1 })],
      bins: [countedBin('B1', 'cricket', { heads, fromMm: 4, toMm: 8 })],
      facts: pencilFacts([eater], [pencilPrey('cricket', [4, 8])], certainPolicy),
    }),
    { days: DAYS, replicates: REPLICATES },
  ).tally;

it('misses a meal each time its longest interval has gone by, and all that came due', () => {
  const { missedOf, due, lateOf, dangersOf } = tallyWith(0);
  expect([...new Set(missedOf)]).toEqual([11]);
  expect(due[0]).toBe(11 * REPLICATES);
  expect([...new Set([...lateOf, ...dangersOf])]).toEqual([1]);
});
