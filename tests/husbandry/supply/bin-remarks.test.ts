/** What is said of a bin as it stands. */
import { expect, it } from 'vitest';
import type { Bin } from '../../../src/husbandry/larder/index.ts';
import { binRemarks } from '../../../src/husbandry/supply/index.ts';
import { binWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const said = (bin: Bin, days = 0) => binRemarks(snapshotWith({ today: TODAY + days, bins: [bin] }), bin);
const crickets = countedBin('B1', 'acheta-domesticus', { heads: 90, fromMm: 6, toMm: 9 });
const frozen: Bin = { ...crickets, role: 'frozen' };
const larvae = countedBin('B2', 'tenebrio-molitor', { heads: 90, fromMm: 14, toMm: 20 });

it('says nothing of a bin at temperatures that were measured', () => {
  expect(said(binWith({ code: 'B', species: 'acheta-domesticus', ownC: { dayC: 30, nightC: 28 } }))).toEqual(
    [],
  );
});

it('says where nothing develops, and where figures are reckoned and not measured', () => {
  const at = (tempC: number) => said({ ...crickets, ownC: { dayC: tempC, nightC: tempC } }).join(' ');
  expect(at(5)).toContain('Nothing develops at 5 °C');
  expect(at(48)).toContain('it is too hot from');
  expect(at(40)).not.toContain('outside what was measured');
  expect(at(39)).toContain('39 °C is outside what was measured');
});

it('says to when a quarantine goes, and no more when it is over', () => {
  const apart: Bin = { ...crickets, ownC: { dayC: 30, nightC: 28 }, quarantineUntil: TODAY + 3 };
  expect(said(apart)).toEqual(['Kept apart until Fri 27 Nov.']);
  expect(said(apart, 3)).toEqual([]);
});

it('says how long the cold may last, that it lasted too long, and that it is too cold', () => {
  const before = { room: 'room', ownC: null };
  const cold = (tempC: number): Bin => {
    const after = { room: 'room', ownC: { dayC: tempC, nightC: tempC } };
    return { ...larvae, ...after, events: [...larvae.events, { day: TODAY, kind: 'placed', before, after }] };
  };
  expect(said(cold(8), 10)).toEqual(['Mealworms keep 120 days in the cold: to Wed 24 Mar.']);
  expect(said(cold(8), 121)[0]).toContain(
    'have stood in it since Tue 24 Nov: warm them up or feed them off.',
  );
  expect(said(cold(2))[1]).toBe('Below 4 °C the cold harms them.');
  expect(said({ ...cold(8), events: larvae.events })).toEqual(['Mealworms keep 120 days in the cold.']);
});

it('says how old a frozen stock is, and when it is past its days', () => {
  expect(said(frozen, 20)).toEqual(['The oldest was frozen on Tue 24 Nov; it keeps to Sun 23 May.']);
  expect(said(frozen, 181)).toEqual([
    'Some of it has been frozen since Tue 24 Nov, longer than 180 days: use no more of that.',
  ]);
  expect(said({ ...frozen, events: [] })).toEqual([]);
});
