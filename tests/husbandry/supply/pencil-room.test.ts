/**
 * The pencil room: six animals, two lots and one delivery over fourteen days, worked by hand. Nothing is uncertain, so
 * every replicate is the same and every figure below can be checked on paper.
 *
 * THE SMALL ONES, S1 S2 S3, take one cricket of 4-8 mm every 4 days. Last fed 4, 3 and 2 days ago, they eat on days
 *     S1: 0 4 8 12      S2: 1 5 9 13      S3: 2 6 10        eleven meals.
 * The small box holds 12 crickets in a warm room (25 C, 10 degrees above the threshold, 70 degree-days to halve): after
 * t days 12 x 2^(-t/7) are still growing, the oldest first gone. Cricket number q (0 youngest to 11 oldest) stands in
 * the middle of its twelfth and outgrows on the first day with 2^(-t/7) < (q + 1/2)/12:
 *     q      11  10   9   8   7   6   5   4   3   2   1   0
 *     day     1   2   3   4   5   7   8  10  13  16  22  33
 * The larder gives what is nearest to outgrowing. Day 0 S1 eats q11; day 1 S2 eats q10; day 2 S3 eats q9; nobody eats on
 * day 3, and on day 4 q8 has outgrown: S1 eats q7; 5 S2 q6; 6 S3 q5; 8 S1 q4; 9 S2 q3; 10 S3 q2; 12 S1 q1; 13 S2 q0.
 * Eleven eaten, one outgrown, nothing else left. Nobody is late.
 *
 * THE LARGE ONES, L1 L2 L3, take one cricket of 12-16 mm every 5 days. Last fed 5, 3 and 1 days ago, they are due on
 *     L1: 0 5 10        L2: 2 7 12        L3: 4 9           eight meals.
 * The large box holds 5 crickets at the threshold (15 C): nothing grows. They go on days 0 2 4 5 7. On day 9 L3 finds
 * none: run out. The interval is fixed, so a meal is late at the end of its own day; it is missed after 2 days' grace:
 *     L3 late on day 9, missed on day 11;  L1 late on day 10, missed on day 12;  L2 late on day 12, would be missed on 14.
 * L3, fed on day 4, passes its safe gap of 9 days at the end of day 13. But on day 13 a delivery brings 2 crickets: they
 * go to those whose meal was missed first, L3 and L1. No danger; L2 still waits. Nothing is left.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import type { CoverAnswer, GroupAnswer } from '../../../src/husbandry/supply/answer.ts';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import { pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { animalWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const small = pencilKind({
  code: 'small-one',
  prey: [4, 8],
  intervalDays: [4, 4],
  graceDays: 2,
  safeGapDays: 9,
  urgency: 'fragile',
  words: 'small one',
});
const large = pencilKind({
  code: 'large-one',
  prey: [12, 16],
  intervalDays: [5, 5],
  graceDays: 2,
  safeGapDays: 9,
  urgency: 'ordinary',
  words: 'large one',
});

const animal = (code: string, kind: string, daysAgo: number) =>
  animalWith({ code, kind, gaugeMm: 10, lastTaken: TODAY - daysAgo });

const room = snapshotWith({
  animals: [
    ...[4, 3, 2].map((daysAgo, i) => animal(`S${i + 1}`, 'small-one', daysAgo)),
    ...[5, 3, 1].map((daysAgo, i) => animal(`L${i + 1}`, 'large-one', daysAgo)),
  ],
  bins: [
    { ...countedBin('small box', 'small-cricket', { heads: 12, fromMm: 4, toMm: 8 }), room: 'warm' },
    { ...countedBin('large box', 'large-cricket', { heads: 5, fromMm: 12, toMm: 16 }), room: 'cold' },
  ],
  rooms: [
    { code: 'cold', name: 'Cold', dayTempC: 15, nightTempC: 15 },
    { code: 'room', name: 'Room', dayTempC: 25, nightTempC: 25 },
    { code: 'warm', name: 'Warm', dayTempC: 25, nightTempC: 25 },
  ],
  deliveries: [
    {
      code: 'D1',
      species: 'large-cricket',
      bin: 'large box',
      lot: { heads: 2, fromMm: 12, toMm: 16 },
      day: TODAY + 13,
    },
  ],
  facts: pencilFacts(
    [small, large],
    [pencilPrey('small-cricket', [4, 8]), pencilPrey('large-cricket', [12, 16])],
  ),
});

let answer: CoverAnswer;
beforeAll(() => {
  answer = sundayCheck(room, { replicates: 3 });
});

const groupOf = (name: string): GroupAnswer => answer.groups.find((group) => group.name === name)!;
const binOf = (code: string) => answer.bins.find((bin) => bin.code === code)!;
const daysWith = (byDay: readonly number[]): number[] =>
  byDay.flatMap((items, day) => (items > 0 ? [day] : []));
const flat = (n: number) => ({ low: n, mid: n, high: n });

it('looks ahead until the delivery is in: fourteen days', () => {
  expect([answer.horizonDays, answer.untilDelivery]).toEqual([14, 'D1']);
});

describe('the small ones', () => {
  it('eat eleven crickets on the days worked out, and nobody is late', () => {
    const group = groupOf('tarantula small ones');
    expect(daysWith(group.wantedByDay)).toEqual([0, 1, 2, 4, 5, 6, 8, 9, 10, 12, 13]);
    expect(group.mealsDue).toBe(11);
    expect([group.lateMeals, group.missedMeals, group.dangers]).toEqual([0, 0, 0]);
    expect(group.runOut).toEqual({ chance: 0, day: null });
    expect(group.daysOfCover).toEqual(flat(14));
    expect(group.verdict).toBe('lasts');
  });

  it('leave one cricket of twelve, which has outgrown them', () => {
    const bin = binOf('small box');
    expect(bin.eaten).toBeCloseTo(11, 6);
    expect(bin.left).toBeCloseTo(1, 6);
    expect(bin.outgrown).toBeCloseTo(1, 6);
    expect(bin.died).toBeCloseTo(0, 6);
  });

  it('can eat, before each evening, what is left and still growing', () => {
    const edible = groupOf('tarantula small ones').stockByDay.map(({ mid }) => Math.round(mid));
    expect(edible).toEqual([12, 11, 10, 9, 8, 7, 6, 5, 5, 4, 3, 2, 2, 1]);
  });
});

describe('the large ones', () => {
  it('come due eight times and run out on day 9', () => {
    const group = groupOf('tarantula large ones');
    expect(daysWith(group.wantedByDay)).toEqual([0, 2, 4, 5, 7, 9, 10, 12]);
    expect(daysWith(group.unmetByDay)).toEqual([9, 10, 12]);
    expect(group.runOut).toEqual({ chance: 1, day: flat(9) });
    expect(group.daysOfCover).toEqual(flat(9));
  });

  it('are late three times and miss two meals; the delivery averts the danger', () => {
    const group = groupOf('tarantula large ones');
    expect([group.lateMeals, group.missedMeals, group.dangers]).toEqual([3, 2, 0]);
    expect(group.touched).toEqual([
      { animal: 'L1', chance: 1 },
      { animal: 'L3', chance: 1 },
    ]);
  });

  it('eat all five crickets and the two that come', () => {
    const bin = binOf('large box');
    expect(bin.arrived).toBeCloseTo(2, 9);
    expect(bin.eaten).toBeCloseTo(7, 9);
    expect(bin.left).toBeCloseTo(0, 9);
  });
});

describe('the answer', () => {
  it('says who runs short and when', () => {
    expect(answer.verdict).toBe('runs short');
    expect(answer.headline).toBe('Tarantula large ones run short in 9 days; the rest lasts.');
    expect(answer.nothingMissed.chance).toBe(0);
    expect(answer.mealsDue).toBe(19);
  });

  it('proposes to have the delivery sooner: seven crickets for eight meals, one late and none missed', () => {
    expect(answer.act?.kind).toBe('bring delivery forward');
    expect(answer.act?.before).toEqual({ lateMeals: 3, missedMeals: 2, dangers: 0, nothingMissed: 0 });
    expect(answer.act?.after).toEqual({ lateMeals: 1, missedMeals: 0, dangers: 0, nothingMissed: 1 });
  });
});
