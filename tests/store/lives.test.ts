/** One animal's whole record: offers with what became of them, moults, and every size that was measured. */
import { expect, test } from 'vitest';
import {
  editAnimal,
  loadLife,
  recordEvening,
  recordMeasure,
  recordMorning,
  recordMoult,
  undo,
} from '../../src/actions/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const lifeOf = (room: Room, code = 'A1') => loadLife(room, code, room.clock().today);

test('an offer has its species, heads, lengths and what became of it; unsaid, it was taken from the next day on', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1')] }));
  expect((await lifeOf(room)).meals).toMatchObject([
    {
      day: TODAY,
      species: 'test-cricket',
      heads: 5,
      fromMm: 4,
      toMm: 6,
      portions: 1,
      outcome: 'offered',
    },
  ]);
  room.pass(1);
  expect((await lifeOf(room)).meals[0]?.outcome).toBe('taken (assumed)');
  good(await recordMorning(room, { exceptions: [{ animal: 'A1', outcome: 'refused' }] }));
  expect((await lifeOf(room)).meals[0]?.outcome).toBe('refused');
});

test('another animal’s meals, and meals that were undone, are not its own', async () => {
  const room = await furnished();
  const evening = good(await recordEvening(room, { rows: [offering('A1'), offering('A2')] }));
  expect((await lifeOf(room)).meals).toHaveLength(1);
  good(await undo(room, { act: evening.act }));
  expect((await lifeOf(room)).meals).toEqual([]);
});

test('sizes are those measured: when it came, since, with a moult, by an edit; of one day the last', async () => {
  const room = await furnished();
  room.pass(10);
  good(await recordMeasure(room, { animal: 'A1', gaugeMm: 41 }));
  good(await recordMeasure(room, { animal: 'A1', gaugeMm: 42 }));
  room.pass(10);
  good(await recordMoult(room, { animal: 'A1' }));
  room.pass(1);
  good(await recordMeasure(room, { animal: 'A1', gaugeMm: 52 }));
  room.pass(60);
  good(await recordMoult(room, { animal: 'A1', gaugeMm: 65 }));
  room.pass(5);
  good(await editAnimal(room, { animal: 'A1', gaugeMm: 66 }));
  good(await editAnimal(room, { animal: 'A1', label: 'blue' }));
  const { sizes, moults } = await lifeOf(room);
  expect(sizes).toEqual([
    { day: TODAY, gaugeMm: 40 },
    { day: TODAY + 10, gaugeMm: 42 },
    { day: TODAY + 21, gaugeMm: 52 },
    { day: TODAY + 81, gaugeMm: 65 },
    { day: TODAY + 86, gaugeMm: 66 },
  ]);
  expect(moults).toEqual([TODAY + 20, TODAY + 81]);
});

test('a size that was undone is no size', async () => {
  const room = await furnished();
  room.pass(10);
  const measured = good(await recordMeasure(room, { animal: 'A1', gaugeMm: 41 }));
  good(await undo(room, { act: measured.act }));
  expect((await lifeOf(room)).sizes).toEqual([{ day: TODAY, gaugeMm: 40 }]);
});
