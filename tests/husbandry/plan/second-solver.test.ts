/**
 * Twenty programmes laid out from small rooms: a second solver that shares no code with ours finds the same optimum,
 * twelve of them in whole packs. Both are given the same programme without factors below a thousandth: with them the
 * second solver's preprocessor stops above an optimum of which ours shows a solution that keeps every row.
 */
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import { programmeOf } from '../../../src/husbandry/plan/programme.ts';
import { withReady } from '../../../src/husbandry/plan/with-ready.ts';
import { type LinearProgramme, solver } from '../../../src/maths/linear-programme.ts';
import { mixedMarket } from '../../support/plan/markets.ts';
import { secondOptimum } from '../../support/plan/second-solver.ts';
import { facts, mixedAnimals, mixedBins, policyWith, snapshotWith } from '../../support/room.ts';

const solve = await solver();
const SMALLEST = 1e-3;

interface Room {
  readonly animals: number;
  readonly weeks: number;
  readonly offers: number;
  /** Weeks decided in whole packs. */
  readonly whole: number;
  readonly level: number;
}

function exported({ animals, weeks, offers, whole, level }: Room, smallest: number): LinearProgramme {
  const snapshot = snapshotWith({
    animals: mixedAnimals(animals),
    bins: mixedBins(animals / 2).slice(0, offers),
    market: { ...mixedMarket, offers: mixedMarket.offers.slice(0, offers) },
    facts: { ...facts, policy: policyWith({ planReplicates: 40, planBands: 6 }) },
  });
  const laid = layOut(snapshot, { weeks, wishes: [], supposed: [] });
  const { programme } = programmeOf({ ...withReady(laid, level), wholeUntil: whole });
  const rows = programme.rows.map((row) => {
    const kept = row.factors.map((factor) => Math.abs(factor) >= smallest);
    return {
      ...row,
      columns: row.columns.filter((_, k) => kept[k]),
      factors: row.factors.filter((_, k) => kept[k]),
    };
  });
  return { ...programme, rows };
}

const rooms: Room[] = Array.from({ length: 20 }, (_, i) => ({
  animals: i < 12 ? 3 + i : 6 + 2 * i,
  weeks: 4 + (i % 3),
  offers: 3 + (i % 6),
  whole: i < 12 ? 2 + (i % 3) : 0,
  level: [0, 0.85, 0.95][i % 3]!,
}));

describe('a second solver', () => {
  it.each(rooms)('agrees on $animals animals, $weeks weeks, $offers offers, $whole weeks whole', (room) => {
    const programme = exported(room, SMALLEST);
    const solved = solve(programme);
    if (solved.status !== 'optimal') throw new Error(solved.status);
    const other = secondOptimum(programme)!;
    expect(Math.abs(solved.value - other)).toBeLessThan(1e-6 * (1 + Math.abs(other)));
  });

  it.each([6, 8])('is not needed to see that small factors change little (%s animals)', (animals) => {
    const room = { animals, weeks: 6, offers: 5, whole: 3, level: 0.85 };
    const [all, large] = [exported(room, 0), exported(room, SMALLEST)].map((programme) => solve(programme));
    if (all?.status !== 'optimal' || large?.status !== 'optimal') throw new Error('no optimum');
    expect(Math.abs(all.value - large.value)).toBeLessThan(1);
  });
});
