/** The room as it is read: the very same until something changes. */
import { expect, test } from 'vitest';
import { loadSnapshot, recordEvening, undo } from '../../src/actions/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good } from '../support/store-at.ts';

test('it is read once as long as nothing changes, and anew after every act, on every day', async () => {
  const room = await furnished();
  const first = await loadSnapshot(room);
  expect(await loadSnapshot(room)).toBe(first);
  good(await recordEvening(room, { rows: [offering('A1')] }));
  const fed = await loadSnapshot(room);
  expect(fed.animals[0]!.lastOffered).toBe(fed.today);
  expect(first.animals[0]!.lastOffered).toBeNull();
  room.pass(1);
  const tomorrow = await loadSnapshot(room);
  expect(tomorrow.today).toBe(fed.today + 1);
  expect(tomorrow.animals[0]!.lastOutcome).toBe('taken (assumed)');
  expect((await loadSnapshot(room, fed.today)).animals[0]!.lastOutcome).toBe('offered');
  expect(await loadSnapshot(room)).toBe(tomorrow);
});

test('it is read anew where the last act was undone', async () => {
  const room = await furnished();
  const { act } = good(await recordEvening(room, { rows: [offering('A1')] }));
  const fed = await loadSnapshot(room);
  good(await undo(room, { act }));
  expect((await loadSnapshot(room)).animals[0]!.lastOffered).toBeNull();
  expect(fed.animals[0]!.lastOffered).toBe(fed.today);
});
