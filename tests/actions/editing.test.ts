/** Two people at one record. */
import { expect, test } from 'vitest';
import { editAnimal } from '../../src/actions/index.ts';
import { revision } from '../../src/store/index.ts';
import { furnished } from '../support/furnished.ts';
import { good } from '../support/store-at.ts';

test('two people who edit one animal from the same page: the second is told and overwrites nothing', async () => {
  const room = await furnished();
  const asOf = await room.store.ask(revision);
  good(await editAnimal(room, { animal: 'A2', label: 'other', asOf }));
  good(await editAnimal(room, { animal: 'A1', label: 'blue', asOf }));
  expect(await editAnimal(room, { animal: 'A1', label: 'red', asOf })).toMatchObject({
    problem: {
      code: 'changed-meanwhile',
      sentence: 'A1 was changed while you wrote ("Changed A1"). Look at what it says now, then save again.',
    },
  });
});
