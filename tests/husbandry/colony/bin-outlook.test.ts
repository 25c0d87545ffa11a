/** A bin's weeks ahead: what may be taken from a colony can be, and what is told at once agrees with what is worked out. */
import { describe, expect, it } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/index.ts';
import { binOutlook } from '../../../src/husbandry/colony/index.ts';
import type { Bin } from '../../../src/husbandry/larder/index.ts';
import { binsGo, binToday } from '../../../src/husbandry/supply/index.ts';
import {
  animalWith,
  binWith,
  countedBin,
  facts,
  policyWith,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const rooms = [{ code: 'room', name: 'Room', dayTempC: 28, nightTempC: 28 }];
const policy = policyWith({ binReplicates: 20 });
const colony = (heads: number, capacity: number | null) =>
  binWith({
    code: 'B1',
    species: 'blaptica-dubia',
    role: 'colony',
    capacity,
    events: [{ kind: 'counted', day: TODAY, heads, fromMm: null, toMm: null }],
  });
const roomWith = (bins: readonly Bin[], animals: readonly Animal[] = []) =>
  snapshotWith({ bins, animals, rooms, facts: { ...facts, policy } });

describe('a colony', () => {
  it('gives twice as many from twice the room, and more small than large', async () => {
    const [one, two] = await Promise.all(
      [500, 1000].map(async (room) => (await binOutlook(roomWith([colony(300, room)]), 'B1'))!.takes!),
    );
    one!.most.forEach(({ heads, size }, i) => {
      expect(heads).toBeGreaterThan(0);
      expect(two!.most[i]).toMatchObject({ size });
      expect(two!.most[i]!.heads / heads).toBeCloseTo(2, 6);
      if (i > 0) expect(heads).toBeLessThan(one!.most[i - 1]!.heads);
    });
    expect(two!.weeklyShare).toBe(one!.weeklyShare);
  });

  it('says nothing of a number where nobody said what it holds', async () => {
    const { takes, culls } = (await binOutlook(roomWith([colony(300, null)]), 'B1'))!;
    expect(takes!.most).toEqual([]);
    expect(culls).toEqual([]);
  });

  it('is told at once how fast it doubles, how full it is and when it is too full', () => {
    const [goes] = binsGo(roomWith([colony(300, 400)]));
    expect(goes!.full).toBeCloseTo(0.75, 2);
    expect(goes!.doublingDays).toBeGreaterThan(30);
    expect(goes!.overFrom).toBeGreaterThan(TODAY);
    expect(binsGo(roomWith([colony(300, 200)]))[0]!.overFrom).toBe(TODAY);
  });
});

describe('a box of crickets', () => {
  const box = countedBin('B1', 'acheta-domesticus', { heads: 300, fromMm: 5, toMm: 6 });
  const animals = [30, 45].map((gaugeMm, i) =>
    animalWith({ code: `A${i}`, kind: 'brachypelma-hamorii', gaugeMm, stageOverride: 'juvenile' }),
  );
  const snapshot = roomWith([box], animals);

  it('is told at once whom it outgrows first, within the days that are worked out', async () => {
    const { outgrows, mostAdult } = binsGo(snapshot)[0]!;
    const first = (await binOutlook(snapshot, 'B1'))!.feeds[0]!.outgrownOn!;
    expect(outgrows!.some).toBe(true);
    expect(outgrows!.from).toBeGreaterThanOrEqual(TODAY + first.low);
    expect(outgrows!.from).toBeLessThanOrEqual(TODAY + first.high);
    expect(mostAdult).toBeGreaterThan(outgrows!.from);
  });

  it('outgrows nobody where nobody eats from it', () => {
    expect(binsGo(roomWith([box]))[0]!.outgrows).toBeNull();
  });

  it('is told at once as it stands in the weeks worked out', async () => {
    const { headsNow, lengthsNow } = binToday(snapshot, box);
    const [week] = (await binOutlook(snapshot, 'B1'))!.weeks;
    expect(headsNow.mid / week!.heads.mid).toBeCloseTo(1, 1);
    expect(lengthsNow.low).toBeGreaterThanOrEqual(4.5);
    expect(lengthsNow.high).toBeLessThanOrEqual(6.5);
  });
});

it('a bin that is not there has no weeks ahead', async () => {
  expect(await binOutlook(roomWith([]), 'B9')).toBeNull();
});
