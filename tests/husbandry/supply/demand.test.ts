/** The forecast of demand: weeks, days and their sums belong together, and follow the collection. */
import { describe, expect, it } from 'vitest';
import type { PlannedChange } from '../../../src/husbandry/snapshot.ts';
import { forecastDemand } from '../../../src/husbandry/supply/demand.ts';
import { mixedAnimals, snapshotWith, TODAY } from '../../support/room.ts';

const room = snapshotWith({ animals: mixedAnimals(60) });
const forecast = forecastDemand(room, { weeks: 4 });

const sac: PlannedChange = {
  code: 'C1',
  kind: 'sac',
  animalKind: 'brachypelma-hamorii',
  from: TODAY + 14,
  to: TODAY + 14,
  chance: 1,
  count: 200,
  gaugeMm: 6,
  room: 'room',
  animal: null,
};

describe('the forecast of a mixed room', () => {
  it('has weeks, sums and two weeks of days for each group that eats', () => {
    expect(forecast.groups.length).toBeGreaterThan(10);
    for (const group of forecast.groups) {
      expect(group.weeks).toHaveLength(4);
      expect(group.cumulative).toHaveLength(4);
      expect(group.days).toHaveLength(14);
      expect(group.window.minMm).toBeLessThan(group.window.idealMm);
    }
  });

  it('has means that add up: days to weeks, weeks to sums', () => {
    for (const { weeks, cumulative, days } of forecast.groups) {
      const sum = (of: readonly { mean: number }[]) => of.reduce((total, { mean }) => total + mean, 0);
      expect(sum(days.slice(0, 7))).toBeCloseTo(weeks[0]!.mean, 6);
      expect(sum(days.slice(7))).toBeCloseTo(weeks[1]!.mean, 6);
      expect(sum(weeks)).toBeCloseTo(cumulative[3]!.mean, 6);
    }
  });

  it('has upper quantiles of sums below the sum of weekly ones, since weeks do not go wrong together', () => {
    const hungry = forecast.groups.filter(({ cumulative }) => cumulative[3]!.mean > 40);
    expect(hungry.length).toBeGreaterThan(5);
    for (const { weeks, cumulative } of hungry)
      expect(cumulative[3]!.high).toBeLessThan(weeks.reduce((total, { high }) => total + high, 0));
  });

  it('is the same to the bit for the same seed, whatever the order of the animals', () => {
    const turned = { ...room, animals: [...room.animals].reverse() };
    expect(forecastDemand(turned, { weeks: 4 })).toEqual(forecast);
  });

  it('differs for another seed', () => {
    expect(forecastDemand({ ...room, seed: 2 }, { weeks: 4 })).not.toEqual(forecast);
  });
});

it('an empty room wants nothing', () => {
  const { groups, exactShare } = forecastDemand(snapshotWith({}), { weeks: 2 });
  expect(groups).toEqual([]);
  expect(exactShare).toBe(1);
});

it('the young of a sac show from the day of their first feed on', () => {
  const [group, ...others] = forecastDemand(snapshotWith({ changes: [sac] }), { weeks: 4 }).groups;
  expect(others).toEqual([]);
  expect(group!.weeks.slice(0, 2).map(({ high }) => high)).toEqual([0, 0]);
  expect(group!.weeks[2]!.mean).toBeGreaterThan(200);
  expect(group!.exact.share).toBe(0);
});
