/** A sending kept on a device arrives late: it counts for the evening its form was shown for, and once. */
import { expect, test } from 'vitest';
import { eveningLines } from '../../../src/store/index.ts';
import { filledHome } from '../../support/house.ts';
import { sheetIn } from '../../support/round-sheet.ts';
import { TODAY } from '../../support/store-at.ts';

test('a round tapped before 04:00 and sent the day after belongs to its evening, however often it comes', async () => {
  const home = await filledHome();
  const sheet = { ...sheetIn(await home.see('/tonight')), formId: 'kept on a phone' };
  home.room.pass(1);
  for (const _ of ['first', 'its answer was lost', 'once more'])
    expect((await home.send('/tonight', sheet)).status).toBe(303);
  const of = async (evening: number) =>
    (await home.room.store.ask(eveningLines(evening))).map(({ animal, kind }) => `${animal} ${kind}`);
  expect((await of(TODAY)).toSorted()).toEqual(['A1 offered', 'A2 offered']);
  expect(await of(TODAY + 1)).toEqual([]);
});
