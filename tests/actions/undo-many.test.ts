/** Several acts undone as one step: all or none, and done again as one. */
import { expect, test } from 'vitest';
import {
  addAnimal,
  addRoom,
  cameBack,
  editAnimal,
  lend,
  recordEvening,
  recordMorning,
  recordMoult,
  recordPremoult,
  undo,
  undoMany,
} from '../../src/actions/index.ts';
import { actNumbered, latestActs, restingUpon, rowsOf, withResting } from '../../src/store/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room } from '../support/store-at.ts';

const rows = async ({ store }: Room) => ({
  animals: await store.ask(rowsOf('animal')),
  rooms: await store.ask(rowsOf('room')),
});
const countsOf = async ({ store }: Room, act: number) =>
  (await store.ask(actNumbered(act)))?.voidedAt === null;
const restingOn = async ({ store }: Room, act: number) =>
  [...withResting(await restingUpon(store.ask, [act]), [act])].sort((a, b) => a - b);

test('an act goes with all that rests on it, however far, as one step and back', async () => {
  const room = await furnished();
  const before = await rows(room);
  const moult = good(await recordMoult(room, { animal: 'A1' }));
  const shelf = good(await editAnimal(room, { animal: 'A1', shelf: 'top' }));
  const other = good(await editAnimal(room, { animal: 'A2', shelf: 'top' }));
  room.pass(90);
  const again = good(await recordMoult(room, { animal: 'A1' }));
  const after = await rows(room);
  const together = await restingOn(room, moult.act);
  expect(together).toEqual([moult.act, shelf.act, again.act]);
  const step = good(await undoMany(room, { acts: together, formId: 'one' }));
  expect(step.summary).toBe('Undid: A1 moulted, with 2 more');
  expect(await countsOf(room, other.act)).toBe(true);
  good(await undo(room, { act: other.act }));
  expect(await rows(room)).toEqual(before);
  good(await undo(room, { act: (await room.store.ask(latestActs(1)))[0]!.id }));
  good(await undo(room, { act: step.act }));
  expect(await rows(room)).toEqual(after);
  expect(good(await undoMany(room, { acts: together, formId: 'one' })).again).toBe(true);
});

test('where one of them cannot be undone, none is', async () => {
  const room = await furnished();
  const premoult = good(await recordPremoult(room, { animal: 'A2' }));
  const moult = good(await recordMoult(room, { animal: 'A1' }));
  const shelf = good(await editAnimal(room, { animal: 'A1', shelf: 'top' }));
  const before = await rows(room);
  expect(await undoMany(room, { acts: [premoult.act, moult.act] })).toMatchObject({
    problem: { code: 'newer-stands', sentence: expect.stringContaining('"Changed A1" came later') },
  });
  expect(await rows(room)).toEqual(before);
  expect(await countsOf(room, premoult.act)).toBe(true);
  expect(await undoMany(room, { acts: [shelf.act, 99] })).toMatchObject({ problem: { code: 'unknown-act' } });
  const undone = good(await undo(room, { act: shelf.act }));
  expect(await undoMany(room, { acts: [shelf.act, moult.act] })).toMatchObject({
    problem: { code: 'already-undone' },
  });
  expect(await undoMany(room, { acts: [undone.act] })).toMatchObject({ problem: { code: 'an-undo' } });
});

test('an evening recorded shelf by shelf is told and undone as one', async () => {
  const room = await furnished();
  const first = good(await recordEvening(room, { rows: [offering('A1'), offering('A2')] }));
  const second = good(await recordEvening(room, { rows: [{ animal: 'A3', outcome: 'premoult' }] }));
  const acts = [first.act, second.act];
  const step = good(await undoMany(room, { acts }));
  expect(step.summary).toBe('Undid: Round of Fri 4 Oct: 2 fed, 1 not');
  const whole = { rows: [offering('A1'), offering('A2'), { animal: 'A3', outcome: 'premoult' as const }] };
  expect(good(await recordEvening(room, whole)).summary).toBe('Round of Fri 4 Oct: 2 fed, 1 not');
});

test('mornings of one evening are told as one', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1')] }));
  const early = good(await recordMorning(room, { exceptions: [{ animal: 'A1', outcome: 'refused' }] }));
  good(await recordEvening(room, { rows: [offering('A2')] }));
  const late = good(await recordMorning(room, {}));
  expect(good(await undoMany(room, { acts: [early.act, late.act] })).summary).toBe(
    'Undid: Morning after Fri 4 Oct: 1 ate, 1 otherwise',
  );
});

test('a room stays while somebody’s act put an animal there', async () => {
  const room = await furnished();
  const added = good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  const animal = good(await addAnimal(room, { kind: 'test-spider', gaugeMm: 30, room: 'Cellar' }));
  const moved = good(await editAnimal(room, { animal: animal.reply.animal, room: 'R1' }));
  expect(await undo(room, { act: added.act })).toMatchObject({ problem: { code: 'newer-stands' } });
  expect(await restingOn(room, added.act)).toEqual([added.act, animal.act, moved.act]);
});

test('what was done again after an undo can be undone once more, with its entries', async () => {
  const room = await furnished();
  const round = good(await recordEvening(room, { rows: [offering('A1')] }));
  const entries = async () =>
    room.store.ask({
      sql: 'select count(*) as n from entry where voided = 0 and act = ?',
      args: [round.act],
      decode: (found) => Number(found[0]?.n),
    });
  const undone = good(await undo(room, { act: round.act }));
  const again = good(await undo(room, { act: undone.act }));
  expect([again.summary, await entries()]).toEqual(['Did again: Round of Fri 4 Oct: 1 fed, 0 not', 1]);
  const twice = good(await undo(room, { act: again.act }));
  expect([twice.summary, await entries()]).toEqual(['Undid: Round of Fri 4 Oct: 1 fed, 0 not', 0]);
  expect(await countsOf(room, round.act)).toBe(false);
  expect(await undo(room, { act: undone.act })).toMatchObject({ problem: { code: 'already-undone' } });
});

test('what was done again counts as newer than what was done before it', async () => {
  const room = await furnished();
  const moult = good(await recordMoult(room, { animal: 'A1' }));
  const label = good(await editAnimal(room, { animal: 'A1', label: 'blue' }));
  const undone = good(await undoMany(room, { acts: [moult.act, label.act] }));
  good(await undo(room, { act: undone.act }));
  expect(await undo(room, { act: moult.act })).toMatchObject({
    problem: { code: 'newer-stands', sentence: expect.stringContaining('"Changed A1" came later') },
  });
  good(await undo(room, { act: label.act }));
  good(await undo(room, { act: moult.act }));
});

test('acts that together change nothing are not done again where their animal is gone', async () => {
  const room = await furnished();
  const added = good(await addAnimal(room, { name: 'Ash', kind: 'test-spider', gaugeMm: 40, room: 'R1' }));
  const { animal } = added.reply;
  const lent = good(await lend(room, { animals: [animal], to: 'A friend' }));
  const back = good(await cameBack(room, { animal }));
  const both = good(await undoMany(room, { acts: [lent.act, back.act] }));
  good(await undo(room, { act: added.act }));
  expect(await undo(room, { act: both.act })).toMatchObject({ problem: { code: 'changed-since' } });
  expect(await countsOf(room, lent.act)).toBe(false);
});
