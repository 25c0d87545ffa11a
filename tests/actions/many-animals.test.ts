/** Many animals changed in one act: moved, ruled, renamed, gone, lent and back. */
import { describe, expect, test } from 'vitest';
import { cameBack, editAnimals, lend, loadSnapshot, undo } from '../../src/actions/index.ts';
import { latestActs, revision, rowNamed, rowsOf } from '../../src/store/index.ts';
import { furnished } from '../support/furnished.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

const all = ['A1', 'A2', 'A3'];
const living = async (room: Room) => (await loadSnapshot(room)).animals.map(({ code }) => code);
const lastSummary = async (room: Room) => (await room.store.ask(latestActs(1)))[0]?.summary;

describe('many animals in one act', () => {
  test('move to a shelf, except those that are there already, and move back as one step', async () => {
    const room = await furnished();
    good(await editAnimals(room, { animals: ['A1'], shelf: 'B2' }));
    const before = await room.store.ask(rowsOf('animal'));
    const done = good(await editAnimals(room, { animals: all, room: 'Warm room', shelf: 'B2' }));
    expect(done).toMatchObject({ reply: { changed: 2 }, summary: 'Moved 2 animals to “B2” of R1' });
    expect((await loadSnapshot(room)).animals.map(({ shelf }) => shelf)).toEqual(['B2', 'B2', 'B2']);
    good(await undo(room, { act: done.act }));
    expect(await room.store.ask(rowsOf('animal'))).toEqual(before);
  });

  test('are treated as juveniles, and go by size again', async () => {
    const room = await furnished();
    good(await editAnimals(room, { animals: all, stageOverride: 'juvenile' }));
    expect((await loadSnapshot(room)).animals.map(({ stageOverride }) => stageOverride)).toEqual([
      'juvenile',
      'juvenile',
      'juvenile',
    ]);
    expect(good(await editAnimals(room, { animals: all, stageOverride: '' })).summary).toBe(
      'Let 3 animals go by size again',
    );
    expect((await loadSnapshot(room)).animals.every(({ stageOverride }) => stageOverride === null)).toBe(
      true,
    );
  });

  test('die or are sold on a day, a group with all its heads', async () => {
    const room = await furnished();
    good(await editAnimals(room, { animals: ['A1', 'A3'], leftReason: 'died', day: room.date(-1) }));
    expect(await living(room)).toEqual(['A2']);
    const group = await room.store.ask(rowNamed('animal', 'A3'));
    expect(group).toMatchObject({ leftReason: 'died', leftDay: TODAY - 1, count: 5 });
    good(await editAnimals(room, { animals: ['A2'], leftReason: 'sold' }));
    expect(await lastSummary(room)).toBe('Sold A2');
  });

  test('are refused as a whole: nobody chosen, one unknown, one gone, an unknown kind, nothing new', async () => {
    const room = await furnished();
    good(await editAnimals(room, { animals: ['A2'], leftReason: 'sold' }));
    const before = await room.store.ask(revision);
    const refusals = [
      [{ animals: [], shelf: 'B' }, 'Nobody is chosen.'],
      [{ animals: ['A1', 'A99'], shelf: 'B' }, 'There is no animal "A99" here.'],
      [{ animals: ['A1', 'A2'], shelf: 'B' }, 'A2 no longer lives here (sold on 2024-10-04).'],
      [{ animals: ['A1'], kind: 'unicorn' }, '"unicorn" is not a kind of animal in the Book.'],
      [{ animals: ['A1'], shelf: '' }, 'That is how it is already.'],
    ] as const;
    for (const [given, sentence] of refusals)
      expect(await editAnimals(room, { ...given, animals: [...given.animals] })).toMatchObject({
        problem: { sentence },
      });
    expect(await room.store.ask(revision)).toBe(before);
  });

  test('are refused when one of them was changed since the page was read, and nobody else matters', async () => {
    const room = await furnished();
    const asOf = await room.store.ask(revision);
    good(await editAnimals(room, { animals: ['A2'], shelf: 'C' }));
    good(await editAnimals(room, { animals: ['A1', 'A3'], shelf: 'D', asOf }));
    expect(await editAnimals(room, { animals: all, shelf: 'E', asOf })).toMatchObject({
      problem: { code: 'changed-meanwhile' },
    });
  });
});

describe('lending', () => {
  test('stops the meals until it is back, with its code, its record and a meal taken away from home', async () => {
    const room = await furnished();
    good(await lend(room, { animals: ['A1', 'A3'], to: 'the school', back: room.date(20) }));
    expect(await living(room)).toEqual(['A2']);
    expect(await room.store.ask(rowNamed('animal', 'A1'))).toMatchObject({
      leftReason: 'lent',
      lentTo: 'the school',
      backDay: TODAY + 20,
    });
    room.pass(15);
    const back = good(await cameBack(room, { animal: 'A1', lastTaken: room.date(-2) }));
    const { animals } = await loadSnapshot(room);
    expect(animals.find(({ code }) => code === 'A1')).toMatchObject({ name: 'Ash', lastTaken: TODAY + 13 });
    expect(await room.store.ask(rowNamed('animal', 'A1'))).toMatchObject({
      leftReason: null,
      leftDay: null,
      lentTo: null,
      backDay: null,
    });
    good(await undo(room, { act: back.act }));
    expect(await living(room)).toEqual(['A2']);
  });

  test('asks who has them and for days in their order; only what is lent comes back', async () => {
    const room = await furnished();
    const said = async (answer: Promise<unknown>) =>
      ((await answer) as { problem?: { sentence: string } }).problem?.sentence;
    expect(await said(lend(room, { animals: ['A1'], to: ' ' }))).toBe('Say who has them.');
    expect(await said(lend(room, { animals: ['A1'], to: 'Jo', back: room.date(-3) }))).toBe(
      '"2024-10-01" is before they leave (2024-10-04).',
    );
    expect(await said(cameBack(room, { animal: 'A1' }))).toBe('A1 is not lent out: it lives here.');
    good(await lend(room, { animals: ['A1'], to: 'Jo' }));
    expect(await said(cameBack(room, { animal: 'A1', day: room.date(-1) }))).toBe(
      '"2024-10-03" is before it was lent (2024-10-04).',
    );
    good(await editAnimals(room, { animals: ['A2'], leftReason: 'sold' }));
    expect(await said(cameBack(room, { animal: 'A2' }))).toBe('A2 was not lent: sold on 2024-10-04.');
  });
});
