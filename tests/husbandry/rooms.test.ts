/** What a bin lives through: a room's day and night, temperatures measured there, and the places it stood in. */
import { describe, expect, it } from 'vitest';
import type { Bin, BinEvent, Where } from '../../src/husbandry/larder/index.ts';
import { binClimate } from '../../src/husbandry/rooms.ts';
import type { Room, TempSeries } from '../../src/husbandry/snapshot.ts';
import { sundayCheck } from '../../src/husbandry/supply/sunday.ts';
import { certainPolicy, countedBin, facts, snapshotWith, TODAY } from '../support/room.ts';

const lengthIn = (dayTempC: number, nightTempC: number): number => {
  const snapshot = snapshotWith({
    bins: [countedBin('B1', 'acheta-domesticus', { heads: 100, fromMm: 5, toMm: 5.2 })],
    rooms: [{ code: 'room', name: 'Room', dayTempC, nightTempC }],
    facts: { ...facts, policy: certainPolicy },
  });
  const later = { ...snapshot, today: snapshot.today + 10 };
  return sundayCheck(later, { days: 1, replicates: 1 }).bins[0]?.lengthsNow.mid as number;
};

it('crickets grow less where nights are cold than where it is warm throughout, and more than where it is cold', () => {
  expect(lengthIn(30, 18)).toBeLessThan(lengthIn(30, 30) - 0.5);
  expect(lengthIn(30, 18)).toBeGreaterThan(lengthIn(18, 18) + 0.5);
  expect(lengthIn(18, 30)).toBe(lengthIn(30, 18));
});

const WARM: Room = { code: 'room', name: 'Room', dayTempC: 28, nightTempC: 22 };
const COLD: Room = { code: 'cellar', name: 'Cellar', dayTempC: 14, nightTempC: 14 };
const measured = (minC: (number | null)[], maxC = minC): TempSeries => ({
  from: TODAY - minC.length,
  minC,
  maxC,
});
const bin = (over: Partial<Bin> = {}) => ({ room: 'room', events: [] as readonly BinEvent[], ...over });
const grownIn = (rooms: readonly Room[], over: Partial<Bin> = {}, days = 14): number => {
  const counted = countedBin('B1', 'gryllodes-sigillatus', { heads: 100, fromMm: 5, toMm: 5.2 });
  const events = [...counted.events, ...(over.events ?? [])];
  const snapshot = snapshotWith({
    today: TODAY + days,
    rooms,
    bins: [{ ...counted, ...over, events }],
    facts: { ...facts, policy: certainPolicy },
  });
  return sundayCheck(snapshot, { days: 1, replicates: 1 }).bins[0]?.lengthsNow.mid as number;
};

describe('a room with measured temperatures', () => {
  const series = measured([15, null, 17], [25, null, 27]);
  const climate = binClimate({ rooms: [{ ...WARM, series }] }, bin());

  it('gives each day its own, and the room as set on every day without', () => {
    expect([-4, -3, -2, -1, 0].map((ago) => climate.on(TODAY + ago))).toEqual([
      { minC: 22, maxC: 28 },
      { minC: 15, maxC: 25 },
      { minC: 22, maxC: 28 },
      { minC: 17, maxC: 27 },
      { minC: 22, maxC: 28 },
    ]);
  });

  it('judges hard stops by the mean of seven days', () => {
    const week = [20, 20, 20, 30, 30, 30, 30];
    const hot = binClimate({ rooms: [{ ...WARM, series: measured(week) }] }, bin());
    expect(hot.weekMeanOn(TODAY - 1)).toBeCloseTo(180 / 7, 9);
    expect(hot.weekMeanOn(TODAY)).toBeCloseTo((160 + 25) / 7, 9);
  });

  it('lets nobody grow in a week at the hard stop, though the room is set to warm', () => {
    const cold = { from: TODAY - 7, minC: new Array(28).fill(20), maxC: new Array(28).fill(20) };
    expect(Math.abs(grownIn([{ ...WARM, series: cold }]) - 5.1)).toBeLessThan(0.1);
    expect(grownIn([WARM])).toBeGreaterThan(6);
  });

  it('does not slow a bin by cold hours alone: nights of 18 under days of 34 outgrow a constant 22', () => {
    const nights = { from: TODAY - 7, minC: new Array(28).fill(18), maxC: new Array(28).fill(34) };
    const steady = { from: TODAY - 7, minC: new Array(28).fill(26), maxC: new Array(28).fill(26) };
    const [swinging, even] = [grownIn([{ ...WARM, series: nights }]), grownIn([{ ...WARM, series: steady }])];
    expect(swinging).toBeGreaterThan(6);
    expect(Math.abs(swinging / even - 1)).toBeLessThan(0.1);
  });
});

describe('a bin put elsewhere', () => {
  const placed = (day: number, before: Where, after: Where): BinEvent => ({
    day,
    kind: 'placed',
    before,
    after,
  });
  const here: Where = { room: 'room', ownC: null };
  const cellar: Where = { room: 'cellar', ownC: null };

  it('lives its past in the old place and its present in the new', () => {
    const events = [placed(TODAY + 7, here, cellar)];
    const moved = bin({ room: 'cellar', events });
    const climate = binClimate({ rooms: [WARM, COLD] }, moved);
    expect([6, 7].map((day) => climate.on(TODAY + day).maxC)).toEqual([28, 14]);
    expect(binClimate({ rooms: [WARM], removedRooms: [COLD] }, moved).on(TODAY + 7).maxC).toBe(14);
    const grown = grownIn([WARM, COLD], { room: 'cellar', events });
    expect(grown).toBeCloseTo(grownIn([WARM], {}, 7), 1);
    expect(grown).toBeLessThan(grownIn([WARM]) - 0.3);
  });

  it('is as warm as itself where it has temperatures of its own', () => {
    const ownC = { dayC: 33, nightC: 31 };
    const events = [placed(TODAY, here, { room: 'room', ownC })];
    const climate = binClimate({ rooms: [WARM] }, bin({ ownC, events }));
    expect([-1, 0].map((day) => climate.on(TODAY + day))).toEqual([
      { minC: 22, maxC: 28 },
      { minC: 31, maxC: 33 },
    ]);
  });
});
