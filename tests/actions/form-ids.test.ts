/** A form counts once, however often and however fast it is sent. */
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { addRoom, recordEvening, undo } from '../../src/actions/index.ts';
import { openStore, revision, rowsOf } from '../../src/store/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { freshContext, freshFolder, good, MOMENT, urlOf } from '../support/store-at.ts';

const input = { name: 'Cellar', dayTempC: 20, nightTempC: 19, formId: 'form-1' };

test('five sendings at once have one effect and one answer', async () => {
  const room = await freshContext();
  const done = await Promise.all(Array.from({ length: 5 }, () => addRoom(room, input)));
  expect(done.map((each) => good(each).reply)).toEqual(Array(5).fill({ room: 'R1' }));
  expect(done.filter((each) => !good(each).again)).toHaveLength(1);
  expect(await room.store.ask(rowsOf('room'))).toHaveLength(1);
});

test('a form sent again after a restart has no second effect', async () => {
  const url = urlOf(join(freshFolder(), 'larder.db'));
  const open = async () => good(await openStore({ place: { url }, moment: MOMENT }));
  const first = await freshContext(await open());
  const done = good(await addRoom(first, input));
  await first.store.close();
  const second = await freshContext(await open());
  expect(good(await addRoom(second, input))).toEqual({ ...done, again: true });
  expect(await second.store.ask(revision)).toBe(1);
  await second.store.close();
});

test('a form used for one verb is refused for another', async () => {
  const room = await furnished();
  const { act } = good(await recordEvening(room, { rows: [offering('A1')], formId: 'form-2' }));
  expect(await undo(room, { act, formId: 'form-2' })).toMatchObject({
    problem: { code: 'form-used', field: 'formId' },
  });
  expect(good(await undo(room, { act, formId: 'form-3' })).again).toBe(false);
  expect(good(await undo(room, { act, formId: 'form-3' })).again).toBe(true);
});
