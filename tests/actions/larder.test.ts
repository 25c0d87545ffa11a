/** Bins and deliveries: what a bin's events are after each verb. */
import { expect, test } from 'vitest';
import {
  cancelDelivery,
  countBin,
  deliveryCame,
  discard,
  editBin,
  expectDelivery,
  importRows,
  loadSnapshot,
  lookBin,
  seeCup,
  seeSize,
  startCup,
  takeIn,
  weighBin,
} from '../../src/actions/index.ts';
import { furnished } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const eventsOf = async (room: Room, code: string) =>
  (await loadSnapshot(room)).bins.find((each) => each.code === code)!.events;

test('every observation becomes an event of its day, in the order written', async () => {
  const room = await furnished();
  room.pass(2);
  good(await takeIn(room, { bin: 'B2', heads: 300, fromMm: 10, toMm: 12, dead: 4 }));
  good(await lookBin(room, { bin: 'B2', level: 'half' }));
  good(await weighBin(room, { bin: 'B2', massMg: '25000' }));
  good(await seeSize(room, { bin: 'B2', fromMm: 11, toMm: 13 }));
  good(await discard(room, { bin: 'B2', heads: 10, sure: true }));
  const day = TODAY + 2;
  expect(await eventsOf(room, 'B2')).toEqual([
    { day, kind: 'delivered', lot: { heads: 300, fromMm: 10, toMm: 12 }, dead: 4 },
    { day, kind: 'looked', level: 'half' },
    { day, kind: 'weighed', massMg: 25000, sample: null },
    { day, kind: 'size seen', fromMm: 11, toMm: 13 },
    { day, kind: 'discarded', heads: 10 },
  ]);
});

test('events begin with the last count that says all, lengths given or none left, and lies far enough back', async () => {
  const room = await furnished();
  good(await discard(room, { bin: 'B1', heads: 10, sure: true }));
  good(await countBin(room, { bin: 'B1', heads: 120 }));
  good(await countBin(room, { bin: 'B1', heads: 110, fromMm: 6, toMm: 9 }));
  good(await discard(room, { bin: 'B1', heads: 1, sure: true }));
  expect(await eventsOf(room, 'B1')).toHaveLength(5);
  room.pass(room.facts.policy.learnDays.value);
  expect((await eventsOf(room, 'B1')).map(({ kind }) => kind)).toEqual(['counted', 'discarded']);
  good(await countBin(room, { bin: 'B1', heads: 0 }));
  expect((await eventsOf(room, 'B1')).map(({ kind }) => kind)).toEqual(['counted', 'discarded', 'counted']);
  room.pass(room.facts.policy.learnDays.value);
  expect(await eventsOf(room, 'B1')).toMatchObject([{ kind: 'counted', heads: 0 }]);
});

test('of a count the grown may be told apart: written down, and said', async () => {
  const room = await furnished();
  good(await countBin(room, { bin: 'B1', heads: 120, grown: '30' }));
  expect((await eventsOf(room, 'B1')).at(-1)).toMatchObject({ kind: 'counted', heads: 120, grown: 30 });
  expect(await countBin(room, { bin: 'B1', heads: 20, grown: 21 })).toMatchObject({
    problem: { field: 'grown', sentence: '21 grown cannot be among 20 in all.' },
  });
  expect(await countBin(room, { bin: 'B1', heads: 20, grown: 1, fromMm: 5, toMm: 9 })).toMatchObject({
    problem: { code: 'size-and-grown', field: 'grown' },
  });
  expect(await countBin(room, { bin: 'B1', heads: 20, grown: 'some' })).toMatchObject({
    problem: { field: 'grown', sentence: expect.stringContaining('"some"') },
  });
});

test('a count below what was taken out since asks, and is written where the keeper is sure', async () => {
  const room = await furnished();
  const day = room.date(0);
  room.pass(5);
  good(await discard(room, { bin: 'B1', heads: 35, sure: true }));
  const early = { bin: 'B1', heads: 20, day };
  expect(await countBin(room, early)).toMatchObject({
    problem: {
      code: 'less-than-taken',
      field: 'heads',
      sentence: expect.stringContaining('You wrote 20, but 35 were taken out since '),
    },
  });
  good(await countBin(room, { ...early, heads: 35 }));
  good(await countBin(room, { ...early, sure: true }));
  good(await countBin(room, { bin: 'B1', heads: 2 }));
});

test('a delivery comes late, short, dead in part and of another size', async () => {
  const room = await furnished();
  const order = { bin: 'B2', heads: 500, fromMm: 6, toMm: 9, day: room.date(2) };
  good(await expectDelivery(room, order));
  expect((await loadSnapshot(room)).deliveries).toEqual([
    {
      code: 'D1',
      species: 'test-cricket',
      bin: 'B2',
      lot: { heads: 500, fromMm: 6, toMm: 9 },
      day: TODAY + 2,
    },
  ]);
  room.pass(3);
  good(await deliveryCame(room, { delivery: 'D1', alive: 430, dead: 60, fromMm: 8, toMm: 11 }));
  const snapshot = await loadSnapshot(room);
  expect(snapshot.deliveries).toEqual([]);
  expect(await eventsOf(room, 'B2')).toEqual([
    { day: TODAY + 3, kind: 'delivered', lot: { heads: 430, fromMm: 8, toMm: 11 }, dead: 60 },
  ]);
  expect(await deliveryCame(room, { delivery: 'D1', alive: 1 })).toMatchObject({
    problem: { code: 'not-expected' },
  });
});

test('a cancelled delivery is no longer expected', async () => {
  const room = await furnished();
  good(await expectDelivery(room, { bin: 'B2', heads: 500, fromMm: 6, toMm: 9, day: room.date(2) }));
  good(await cancelDelivery(room, { delivery: 'D1' }));
  expect((await loadSnapshot(room)).deliveries).toEqual([]);
});

test('a cup is started and seen; a bin out of use leaves the snapshot', async () => {
  const room = await furnished();
  const { bin } = good(await startCup(room, { species: 'test-fly', room: 'Warm room' })).reply;
  good(await seeCup(room, { bin, look: 'larvae' }));
  expect(await eventsOf(room, bin)).toEqual([
    { day: TODAY, kind: 'cup looked', look: 'started' },
    { day: TODAY, kind: 'cup looked', look: 'larvae' },
  ]);
  good(await editBin(room, { bin, closed: true }));
  expect((await loadSnapshot(room)).bins.map(({ code }) => code)).toEqual(['B1', 'B2']);
  expect(await countBin(room, { bin, heads: 5 })).toMatchObject({ problem: { code: 'bin-closed' } });
});

test('an import adds, changes and fills in one act', async () => {
  const room = await furnished();
  const cedar = { kind: 'test-spider', room: 'Warm room', gaugeMm: '12.5', name: 'Cedar' };
  const newBin = { species: 'test-cricket', room: 'R1' };
  const { reply } = good(
    await importRows(room, {
      animals: {
        new: [{ ...cedar, lastFed: room.date(-5), lastMoult: room.date(-20) }],
        changed: [{ code: 'A1', fields: { shelf: 'top', gaugeMm: 42 } }],
      },
      lots: [
        { bin: 'B2', lot: { heads: 50, fromMm: 5, toMm: 6 }, came: room.date(-3) },
        { newBin, lot: { heads: 70, fromMm: 2, toMm: 3 } },
        { newBin: { ...newBin, name: 'Uncounted' } },
      ],
    }),
  );
  expect(reply).toEqual({ animals: ['A4'], bins: ['B3', 'B4'] });
  const { animals, bins, revision } = await loadSnapshot(room);
  expect(animals.find(({ code }) => code === 'A1')).toMatchObject({ shelf: 'top', gaugeMm: 42 });
  expect(animals.find(({ code }) => code === 'A4')).toMatchObject({
    name: 'Cedar',
    gaugeMm: 12.5,
    room: 'R1',
    lastTaken: TODAY - 5,
    lastMoult: { earliest: TODAY - 20, found: TODAY - 20 },
  });
  expect(bins.map(({ events }) => events.map(({ kind }) => kind))).toEqual([
    ['counted'],
    ['delivered'],
    ['counted'],
    [],
  ]);
  expect(revision).toBe(7);
});
