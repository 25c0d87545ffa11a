/** A moult out of turn is refused, a size that shrank at a moult is asked about; nothing is written until it is clear. */
import { expect, test } from 'vitest';
import { recordMeasure, recordMoult, undo } from '../../src/actions/index.ts';
import type { Result } from '../../src/husbandry/result.ts';
import { revision } from '../../src/store/index.ts';
import { furnished } from '../support/furnished.ts';
import { good, type Room } from '../support/store-at.ts';

const problemOf = (result: Result<unknown>) => (result.ok ? null : result.problem);
/** A1, 40 mm when it came on 2024-10-04, moulted on 2024-10-14; today is 2024-10-24. */
async function moultedTenDaysAgo(): Promise<Room> {
  const room = await furnished();
  room.pass(10);
  good(await recordMoult(room, { animal: 'A1' }));
  room.pass(10);
  return room;
}

test('a moult before the last on record is refused with both days', async () => {
  const room = await moultedTenDaysAgo();
  const before = await room.store.ask(revision);
  expect(problemOf(await recordMoult(room, { animal: 'A1', found: '2024-10-08' }))).toMatchObject({
    code: 'moult-before-last',
    field: 'found',
    sentence: '"2024-10-08" is before its last moult on record, found on 2024-10-14.',
  });
  expect(await room.store.ask(revision)).toBe(before);
});

test('so is one last seen unmoulted before it, and one that is written down already', async () => {
  const room = await moultedTenDaysAgo();
  expect(
    problemOf(await recordMoult(room, { animal: 'A1', found: '2024-10-24', earliest: '2024-10-13' })),
  ).toMatchObject({ code: 'moult-before-last', field: 'earliest' });
  expect(problemOf(await recordMoult(room, { animal: 'A1', found: '2024-10-14' }))).toMatchObject({
    code: 'moult-known',
    sentence: 'A moult found on 2024-10-14 is written down already.',
  });
});

test('a moult that was undone stands in nobody’s way', async () => {
  const room = await furnished();
  room.pass(10);
  const moult = good(await recordMoult(room, { animal: 'A1' }));
  good(await undo(room, { act: moult.act }));
  good(await recordMoult(room, { animal: 'A1', found: '2024-10-08' }));
});

test('a size below the one measured before the moult is asked about, and kept when it is meant', async () => {
  const room = await furnished();
  room.pass(10);
  const given = { animal: 'A1', gaugeMm: 34 };
  expect(problemOf(await recordMoult(room, given))).toEqual({
    code: 'smaller-after-moult',
    field: 'smaller',
    sentence: '34 mm is less than the 40 mm measured before this moult. Was it measured another way?',
  });
  expect(good(await recordMoult(room, { ...given, smaller: 'on' })).reply).toEqual({ gaugeMm: 34 });
});

test('so is a size measured after the moult; but not one that only corrects the size before', async () => {
  const room = await moultedTenDaysAgo();
  const measured = (gaugeMm: number, day?: string) => recordMeasure(room, { animal: 'A1', gaugeMm, day });
  expect(problemOf(await measured(39))?.code).toBe('smaller-after-moult');
  expect(problemOf(await recordMeasure(room, { animal: 'A1', gaugeMm: 39, smaller: true }))).toBeNull();
  expect(problemOf(await measured(39, '2024-10-13'))).toBeNull();
});
