/** How long a bin stands in the cold or apart, and how old a frozen stock is. */
import { expect, it } from 'vitest';
import {
  type BinEvent,
  coldSince,
  coldUntil,
  isApart,
  oldestSince,
  type Where,
} from '../../../src/husbandry/larder/index.ts';
import type { ColdStore } from '../../../src/husbandry/prey/index.ts';
import { facts } from '../../support/room.ts';

const store = facts.species.get('tenebrio-molitor')?.coldStore as ColdStore;
const at = (tempC: number | null): Where => ({
  room: 'R1',
  ownC: tempC === null ? null : { dayC: tempC, nightC: tempC },
});
const placed = (day: number, before: Where, after: Where): BinEvent => ({
  day,
  kind: 'placed',
  before,
  after,
});

it('counts the cold from the last day it came out of the warm, not from a change of the fridge', () => {
  const events = [
    placed(10, at(null), at(8)),
    placed(14, at(8), at(25)),
    placed(20, at(25), at(9)),
    placed(30, at(9), at(8)),
  ];
  expect(coldSince({ ownC: at(8).ownC, events }, store)).toBe(20);
  expect(coldUntil(20, store)).toBe(20 + store.days.value);
  expect(coldSince({ ownC: at(25).ownC, events }, store)).toBeNull();
  expect(coldSince({ ownC: null, events }, store)).toBeNull();
  expect(coldSince({ ownC: at(8).ownC, events: [] }, store)).toBeNull();
});

it('keeps a bin apart to the end of its days, and not on the day they end', () => {
  expect([6, 7].map((day) => isApart({ quarantineUntil: 7 }, day))).toEqual([true, false]);
  expect(isApart({ quarantineUntil: null }, 1)).toBe(false);
});

it('takes the oldest of a frozen stock to be used first', () => {
  const lot = (heads: number) => ({ heads, fromMm: 8, toMm: 9 });
  const events: BinEvent[] = [
    { day: 1, kind: 'moved in', lot: lot(50) },
    { day: 5, kind: 'delivered', lot: lot(40), dead: 0 },
    { day: 6, kind: 'offered', heads: 60, fromMm: 8, toMm: 9 },
  ];
  expect(oldestSince({ events }, 90)).toBe(1);
  expect(oldestSince({ events }, 41)).toBe(1);
  expect(oldestSince({ events }, 30)).toBe(5);
  expect(oldestSince({ events }, 0)).toBeNull();
  expect(oldestSince({ events: [{ day: 0, kind: 'counted', ...lot(20) }, ...events] }, 95)).toBe(0);
});
