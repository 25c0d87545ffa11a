/** The wave of a sac in demand, and the cups or parcels that meet it, by hand and as they must behave. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlannedChange } from '../../../src/husbandry/snapshot.ts';
import { cupStarts } from '../../../src/husbandry/supply/cup-plan.ts';
import { orderInTimeFor } from '../../../src/husbandry/supply/delivery-days.ts';
import { forecastDemand } from '../../../src/husbandry/supply/demand.ts';
import { hatchWave } from '../../../src/husbandry/supply/wave.ts';
import { youngPrey } from '../../../src/husbandry/supply/young-prey.ts';
import { animalWith, binWith, countedBin, mixedAnimals, snapshotWith, TODAY } from '../../support/room.ts';

const sac: PlannedChange = {
  code: 'P1',
  kind: 'sac',
  animalKind: 'brachypelma-hamorii',
  from: TODAY + 60,
  to: TODAY + 60,
  chance: 0.5,
  count: 100,
  gaugeMm: 6,
  room: 'room',
  animal: null,
};
const dates = {
  laid: null,
  pulled: null,
  hatched: null,
  counted: false,
  settled: null,
  ended: null,
  shareKept: 1,
  motherFasts: null,
};
const room = snapshotWith({ animals: mixedAnimals(40), changes: [sac] });

describe('the wave', () => {
  const wave = hatchWave(room, sac)!;

  it('is nothing before the first feed and about one and a half items a young every five days after', () => {
    expect(wave.with.slice(0, 8).map(({ mean }) => mean)).toEqual(
      wave.without.slice(0, 8).map(({ mean }) => mean),
    );
    const aWeek = (100 * 1.5 * 7) / 5;
    expect(wave.peak - wave.peakWithout).toBeGreaterThan(aWeek * 0.8);
    expect(wave.peak - wave.peakWithout).toBeLessThan(aWeek * 1.15);
  });

  it('is the demand of that group in the whole room, on the same draws', () => {
    const sure = { ...room, changes: [{ ...sac, chance: 1 }] };
    const whole = forecastDemand(sure, { weeks: wave.with.length, replicates: wave.replicates });
    const group = whole.groups.find(({ key }) => key === wave.group.key)!;
    expect(group.weeks.map(({ mean }) => mean)).toEqual(wave.with.map(({ mean }) => mean));
    expect(group.weeks.map(({ high }) => high)).toEqual(wave.with.map(({ high }) => high));
  });

  it('is half as high when half of the young are given away, and none when all are', () => {
    const keeping = (shareKept: number) => ({ ...sac, sac: { ...dates, shareKept } });
    const waveOf = (change: PlannedChange) => hatchWave({ ...room, changes: [change] }, change);
    const half = waveOf(keeping(0.5))!;
    const share = (half.peak - half.peakWithout) / (wave.peak - wave.peakWithout);
    expect(share).toBeCloseTo(0.5, 1);
    expect(waveOf(keeping(0))).toBeNull();
  });
});

it('a sac that was a dud, or whose young have settled, wants nothing any more', () => {
  const want = (change: PlannedChange) =>
    forecastDemand(snapshotWith({ changes: [{ ...change, chance: 1 }] }), { weeks: 12, replicates: 5 })
      .groups;
  expect(
    want(sac)
      .flatMap(({ weeks }) => weeks)
      .some(({ mean }) => mean > 0),
  ).toBe(true);
  expect(want({ ...sac, sac: { ...dates, ended: { how: 'dud', day: TODAY - 1 } } })).toEqual([]);
  expect(want({ ...sac, sac: { ...dates, settled: TODAY - 1 } })).toEqual([]);
});

it('a mother that fasts wants nothing until her fast is over, and is in no danger meanwhile', () => {
  const mother = animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 145, lastTaken: TODAY - 30 });
  const fasting = { ...mother, fasts: { from: TODAY - 20, to: TODAY + 34 } };
  const weeks = (animal: typeof mother) =>
    forecastDemand(snapshotWith({ animals: [animal] }), { weeks: 8, replicates: 40 }).groups[0]!.weeks;
  expect(weeks(mother)[0]!.mean).toBeGreaterThan(1);
  expect(
    weeks(fasting)
      .slice(0, 5)
      .map(({ high }) => high),
  ).toEqual([0, 0, 0, 0, 0]);
  expect(
    weeks(fasting)
      .slice(5)
      .reduce((sum, { mean }) => sum + mean, 0),
  ).toBeGreaterThan(1);
});

describe('cups by hand', () => {
  /** Nothing for 10 days, 20 flies a day for a week, 5 a day for another. */
  const flies = Float64Array.from({ length: 30 }, (_, day) =>
    day < 10 ? 0 : day < 17 ? 20 : day < 24 ? 5 : 0,
  );
  const cup = { flies, firstDay: 10, bestDay: 10, bestWeek: 140 };

  it('are started so that their best week is the week that wants them, less what those before still give', () => {
    expect(cupStarts({ today: 0, from: 40, flies: [200, 200, 200] }, cup)).toEqual([
      { day: 30, cups: 2 },
      { day: 37, cups: 1 },
      { day: 44, cups: 2 },
    ]);
  });

  it('are started today when it is late, and not at all for a week that has enough', () => {
    expect(cupStarts({ today: 35, from: 40, flies: [200] }, cup)).toEqual([{ day: 35, cups: 2 }]);
    expect(cupStarts({ today: 0, from: 40, flies: [0, 0] }, cup)).toEqual([]);
  });
});

describe('what to start and when', () => {
  const starts = (from: number, tempC: number) => {
    const change = { ...sac, from: TODAY + from, to: TODAY + from };
    const rooms = [{ code: 'room', name: 'Room', dayTempC: tempC, nightTempC: tempC }];
    const crickets = countedBin('B1', 'acheta-domesticus', { heads: 50, fromMm: 15, toMm: 20 });
    const here = snapshotWith({ changes: [change], rooms, bins: [crickets] });
    return youngPrey(here, change, hatchWave(here, change)!);
  };

  it('fits the young: flies from a cup, and the smallest of the crickets that are kept here', () => {
    const { cups, order, fits } = starts(60, 25);
    expect(cups?.species).toBe('drosophila-melanogaster');
    expect(order?.size).toMatch(/pinhead/);
    expect(fits.length).toBeGreaterThan(1);
    expect(order!.comes).toBeLessThanOrEqual(TODAY + 60);
    expect(order!.orderBy).toBe(order!.comes - 3);
  });

  it('is as much earlier as the sac is earlier, and later in a warmer room', () => {
    fc.assert(
      fc.property(fc.integer({ min: 45, max: 100 }), fc.integer({ min: 1, max: 20 }), (from, sooner) => {
        const first = (days: number, tempC: number) => starts(days, tempC).cups!.starts[0]!.day;
        expect(first(from, 24) - first(from - sooner, 24)).toBe(sooner);
        expect(first(from, 27)).toBeGreaterThan(first(from, 20));
      }),
      { numRuns: 8 },
    );
  });

  it('asks for fewer cups when a cup that stands still has flies to spare', () => {
    const change = { ...sac, from: TODAY + 6, to: TODAY + 6 };
    const young = binWith({
      code: 'B1',
      species: 'drosophila-melanogaster',
      role: 'cup',
      events: [{ kind: 'cup looked', look: 'started', day: TODAY - 8 }],
    });
    const advice = (bins: (typeof young)[]) => {
      const here = snapshotWith({ changes: [change], bins });
      return youngPrey(here, change, hatchWave(here, change)!).cups!;
    };
    const cups = ({ starts: all }: ReturnType<typeof advice>) =>
      all.reduce((sum, start) => sum + start.cups, 0);
    expect(advice([]).spare).toBe(0);
    expect(advice([young, { ...young, code: 'B2' }]).spare).toBeGreaterThan(100);
    expect(cups(advice([young, { ...young, code: 'B2' }]))).toBeLessThan(cups(advice([])));
  });
});

it('an order that would have been due before today is for the next parcel', () => {
  const { deliveryWeekdays } = snapshotWith({});
  expect(deliveryWeekdays.filter(Boolean)).toHaveLength(4);
  const soon = orderInTimeFor(snapshotWith({}), TODAY + 1)!;
  expect(soon).toEqual({ orderBy: TODAY, comes: TODAY + 3 });
  expect(orderInTimeFor(snapshotWith({ deliveryWeekdays: Array(7).fill(false) }), TODAY + 9)).toBeNull();
});
