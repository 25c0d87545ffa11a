/** What leaves keeps its code and its record, and comes back; nothing in use is removed. */
import { expect, test } from 'vitest';
import {
  addRoom,
  bringBack,
  cancelDelivery,
  closeBin,
  editAnimal,
  editBin,
  expectDelivery,
  lend,
  loadSnapshot,
  planChange,
  recordDied,
  removeRoom,
  takeAway,
  undo,
} from '../../src/actions/index.ts';
import { deathsOnRecord, rowNamed } from '../../src/store/index.ts';
import { furnished } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const animal = ({ store }: Room, code: string) => store.ask(rowNamed('animal', code));

test('an animal that left comes back as it was', async () => {
  const room = await furnished();
  const before = await animal(room, 'A1');
  good(await recordDied(room, { animal: 'A1', day: room.date(-2) }));
  expect(await bringBack(room, { what: 'animal', code: 'A2' })).toMatchObject({
    problem: { code: 'is-here' },
  });
  const back = good(await bringBack(room, { what: 'animal', code: 'A1' }));
  expect(back.summary).toBe('Brought A1 back (died on 2024-10-02)');
  expect(await animal(room, 'A1')).toEqual(before);
});

test('one entered by mistake is taken off the books and is no death', async () => {
  const room = await furnished();
  good(await takeAway(room, { animal: 'A1', reason: 'entered by mistake' }));
  expect(await animal(room, 'A1')).toMatchObject({ leftReason: 'entered by mistake', leftDay: TODAY });
  expect(await room.store.ask(deathsOnRecord('A1'))).toBe(0);
  expect((await loadSnapshot(room)).animals.map(({ code }) => code)).toEqual(['A2', 'A3']);
  expect(await takeAway(room, { animal: 'A1', reason: 'sold' })).toMatchObject({
    problem: { code: 'animal-left' },
  });
});

test('heads that died come back to their group, no more than died', async () => {
  const room = await furnished();
  good(await recordDied(room, { animal: 'A3', heads: 2 }));
  expect(await bringBack(room, { what: 'animal', code: 'A3', heads: 3 })).toMatchObject({
    problem: { sentence: '"3" is more than the 2 that died in A3.' },
  });
  good(await bringBack(room, { what: 'animal', code: 'A3', heads: 2 }));
  expect(await animal(room, 'A3')).toMatchObject({ count: 5 });
  expect(await bringBack(room, { what: 'animal', code: 'A3', heads: 1 })).toMatchObject({
    problem: { code: 'is-here' },
  });
});

test('a bin goes when nothing is expected for it, and comes back with its record', async () => {
  const room = await furnished();
  const order = { bin: 'B2', heads: 300, fromMm: 6, toMm: 9, day: room.date(3) };
  const { reply } = good(await expectDelivery(room, order));
  const sentence = '300 Test crickets are expected for Large on Mon 7 Oct; say first that they do not come.';
  for (const refused of [
    await closeBin(room, { bin: 'B2' }),
    await editBin(room, { bin: 'B2', closed: true }),
  ])
    expect(refused).toMatchObject({ problem: { code: 'bin-expected', sentence } });
  good(await cancelDelivery(room, { delivery: reply.delivery }));
  good(await closeBin(room, { bin: 'B2' }));
  expect(await bringBack(room, { what: 'delivery', code: reply.delivery })).toMatchObject({
    problem: { code: 'bin-closed' },
  });
  const before = (await loadSnapshot(room)).bins.length;
  good(await bringBack(room, { what: 'bin', code: 'B2' }));
  good(await bringBack(room, { what: 'delivery', code: reply.delivery }));
  const { bins, deliveries } = await loadSnapshot(room);
  expect([before, bins.length, deliveries.length]).toEqual([1, 2, 1]);
});

test('a room in use says what is in it; an empty one goes and comes back', async () => {
  const room = await furnished();
  expect(await removeRoom(room, { room: 'R1' })).toMatchObject({ problem: { code: 'only-room' } });
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  expect(await removeRoom(room, { room: 'R1' })).toMatchObject({
    problem: {
      sentence: 'Warm room is in use: Ash, Birch, Sac of five and 2 more. Move them to another room first.',
    },
  });
  const span = { from: room.date(2), to: room.date(4) };
  const plan = { kind: 'sac' as const, animalKind: 'test-spider', count: 9, gaugeMm: 4, room: 'R2' };
  const planned = good(await planChange(room, { ...plan, ...span }));
  expect(await removeRoom(room, { room: 'R2' })).toMatchObject({
    problem: { sentence: 'Cellar is in use: a planned sac of 9. Move them to another room first.' },
  });
  good(await undo(room, { act: planned.act }));
  good(await removeRoom(room, { room: 'R2' }));
  expect((await loadSnapshot(room)).rooms.map(({ name }) => name)).toEqual(['Warm room']);
  expect(await editAnimal(room, { animal: 'A1', room: 'Cellar' })).toMatchObject({
    problem: { code: 'unknown-room' },
  });
  good(await bringBack(room, { what: 'room', code: 'R2' }));
  good(await editAnimal(room, { animal: 'A1', room: 'Cellar' }));
});

test('nobody comes back into a room that was removed, by undo or otherwise', async () => {
  const room = await furnished();
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  good(await editAnimal(room, { animal: 'A1', room: 'R2' }));
  const died = good(await recordDied(room, { animal: 'A1' }));
  const removed = good(await removeRoom(room, { room: 'R2' }));
  expect(await undo(room, { act: died.act })).toMatchObject({ problem: { code: 'newer-stands' } });
  expect(await bringBack(room, { what: 'animal', code: 'A1' })).toMatchObject({
    problem: { sentence: 'The room of A1 was removed; bring it back first.' },
  });
  const moved = good(await editAnimal(room, { animal: 'A2', label: 'x' }));
  const undone = good(await undo(room, { act: moved.act }));
  good(await undo(room, { act: undone.act }));
  good(await undo(room, { act: removed.act }));
  good(await undo(room, { act: died.act }));
  expect(await animal(room, 'A1')).toMatchObject({ room: 'R2', leftDay: null });
});

test('what was undone is not done again into a room that was removed since', async () => {
  const room = await furnished();
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  const moved = good(await editAnimal(room, { animal: 'A1', room: 'R2' }));
  const undone = good(await undo(room, { act: moved.act }));
  good(await removeRoom(room, { room: 'R2' }));
  expect(await undo(room, { act: undone.act })).toMatchObject({
    problem: { code: 'place-gone', sentence: expect.stringContaining('Bring that back first.') },
  });
});

test('a room that a lent animal comes back to is in use', async () => {
  const room = await furnished();
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  good(await editAnimal(room, { animal: 'A1', room: 'R2' }));
  good(await lend(room, { animals: ['A1'], to: 'A neighbour' }));
  expect(await removeRoom(room, { room: 'R2' })).toMatchObject({
    problem: { sentence: 'Cellar is in use: Ash. Move them to another room first.' },
  });
});
