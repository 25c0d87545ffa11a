/** A room's day and night both count. */
import { expect, it } from 'vitest';
import { sundayCheck } from '../../src/husbandry/supply/sunday.ts';
import { certainPolicy, countedBin, facts, snapshotWith } from '../support/room.ts';

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
