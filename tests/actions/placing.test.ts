/** Bins put elsewhere, warmed, cooled and stored cold: their past stays where it was lived. */
import { expect, test } from 'vitest';
import {
  coldStore,
  countBin,
  editBin,
  loadSnapshot,
  mergeBins,
  placeBin,
  removeRoom,
  undo,
} from '../../src/actions/index.ts';
import { binClimate } from '../../src/husbandry/rooms.ts';
import { binRemarks } from '../../src/husbandry/supply/index.ts';
import { binIn, headsOf, livingRoom } from '../support/living-room.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const problemOf = <T>(result: { ok: true; value: T } | { ok: false; problem: { sentence: string } }) =>
  result.ok ? null : result.problem.sentence;
const tempOn = async (room: Room, code: string, day: number) =>
  binClimate(await loadSnapshot(room), await binIn(room, code)).on(day);

test('a bin moved to another room lives its past in the old one, also when that room is gone', async () => {
  const room = await livingRoom();
  good(await placeBin(room, { bin: 'B3', room: 'R2' }));
  room.pass(5);
  const placed = good(await placeBin(room, { bin: 'B3', room: 'R1' }));
  good(await removeRoom(room, { room: 'R2' }));
  expect(await tempOn(room, 'B3', TODAY + 4)).toEqual({ minC: 16, maxC: 18 });
  expect((await tempOn(room, 'B3', TODAY + 5)).maxC).toBeGreaterThan(20);
  expect(await headsOf(room, 'B3')).toBeGreaterThan(0);
  expect((await undo(room, { act: placed.act })).ok).toBe(false);
});

test('changing the room on the form of a bin keeps its past as well', async () => {
  const room = await livingRoom();
  room.pass(3);
  const edited = good(await editBin(room, { bin: 'B3', room: 'R2', name: 'Cool crickets' }));
  expect(await tempOn(room, 'B3', TODAY + 3)).toEqual({ minC: 16, maxC: 18 });
  expect((await tempOn(room, 'B3', TODAY + 2)).maxC).toBeGreaterThan(20);
  expect((await binIn(room, 'B3')).events.at(-1)).toMatchObject({ kind: 'placed', after: { room: 'R2' } });
  good(await editBin(room, { bin: 'B3', name: 'Crickets again' }));
  expect((await binIn(room, 'B3')).events.filter(({ kind }) => kind === 'placed')).toHaveLength(1);
  expect((await undo(room, { act: edited.act })).ok).toBe(false);
});

test('where a bin was placed is known after a count that says all', async () => {
  const room = await livingRoom();
  good(await coldStore(room, { bin: 'B4', tempC: 9 }));
  room.pass(121);
  good(await countBin(room, { bin: 'B4', heads: 450, fromMm: 14, toMm: 22 }));
  room.pass(room.facts.policy.learnDays.value);
  const bin = await binIn(room, 'B4');
  expect(bin.events.map(({ kind }) => kind)).toEqual(['placed', 'counted']);
  expect(binRemarks(await loadSnapshot(room), bin).join(' ')).toContain(
    'keep 120 days in the cold; these have stood in it since Fri 4 Oct: warm them up or feed them off.',
  );
});

test('its own temperatures count instead of the room, and beyond what was measured it is said', async () => {
  const room = await livingRoom();
  const placed = good(await placeBin(room, { bin: 'B1', ownC: { dayC: 44, nightC: 43 } }));
  expect(await tempOn(room, 'B1', TODAY)).toEqual({ minC: 43, maxC: 44 });
  expect(placed.reply.remarks.join(' ')).toMatch(/43–44 °C is outside what was measured/);
  const cold = good(await placeBin(room, { bin: 'B1', ownC: { dayC: 8, nightC: 8 } }));
  expect(cold.reply.remarks.join(' ')).toMatch(/Nothing develops at 8 °C/);
  good(await placeBin(room, { bin: 'B1', ownC: null }));
  expect((await tempOn(room, 'B1', TODAY)).maxC).toBeLessThan(35);
});

test('a place is not written in before a later one', async () => {
  const room = await livingRoom();
  room.pass(5);
  good(await placeBin(room, { bin: 'B3', room: 'R2', day: room.date(-1) }));
  const early = await placeBin(room, { bin: 'B3', room: 'R1', day: room.date(-3) });
  expect(problemOf(early)).toContain('Crickets was placed on Tue 8 Oct; give that day or a later one.');
});

test('only what keeps in the cold is put there, at a cold it keeps in', async () => {
  const room = await livingRoom();
  expect(problemOf(await coldStore(room, { bin: 'B3' }))).toMatch(
    /^House crickets are not known to keep in the cold: below [\d.]+ °C nothing develops/,
  );
  expect(problemOf(await coldStore(room, { bin: 'B4', tempC: 2 }))).toContain(
    '"2" °C is not a cold mealworms keep in; give a temperature from 7 to 10 °C.',
  );
  const done = good(await coldStore(room, { bin: 'B4' }));
  expect(done.summary).toBe('Put B4 in the cold at 8.5 °C; it keeps to Sat 1 Feb');
});

test('a merged bin keeps nothing of the place of the other', async () => {
  const room = await livingRoom();
  good(await placeBin(room, { bin: 'B2', room: 'R2' }));
  good(await mergeBins(room, { bin: 'B2', to: 'B1' }));
  expect((await tempOn(room, 'B1', TODAY)).maxC).toBeGreaterThan(20);
});
