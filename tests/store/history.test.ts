/** What happened to an animal or a bin, told act by act. */
import { expect, test } from 'vitest';
import { editAnimal, recordEvening, recordMoult, undo } from '../../src/actions/index.ts';
import { actsAbout } from '../../src/store/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, TODAY } from '../support/store-at.ts';

test('an animal’s history is its acts, newest first, with what was undone marked', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1'), offering('A2')] }));
  const moult = good(await recordMoult(room, { animal: 'A1' }));
  good(await undo(room, { act: moult.act }));
  good(await editAnimal(room, { animal: 'A1', label: 'blue' }));
  const told = await room.store.ask(actsAbout('animal', 'A1'));
  expect(told.map(({ summary, undone }) => [summary, undone])).toEqual([
    ['Changed A1', false],
    ['A1 moulted', true],
    ['Round of Fri 4 Oct: 2 fed, 0 not', false],
    ['Added Ash (A1)', false],
  ]);
  expect(told[2]?.lines).toMatchObject([{ day: TODAY, kind: 'offered', animal: 'A1', bin: 'B1', heads: 5 }]);
});

test('a bin’s history has the meals taken from it', async () => {
  const room = await furnished();
  good(await recordEvening(room, { rows: [offering('A1'), offering('A2')] }));
  const told = await room.store.ask(actsAbout('bin', 'B1'));
  expect(told.map(({ lines }) => lines.map(({ kind, animal }) => [kind, animal]))).toEqual([
    [
      ['offered', 'A1'],
      ['offered', 'A2'],
    ],
    [['counted', null]],
  ]);
});
