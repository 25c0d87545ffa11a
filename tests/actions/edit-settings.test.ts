/** What was set is told by its name. */
import { expect, test } from 'vitest';
import { editSettings } from '../../src/actions/index.ts';
import { freshContext, good } from '../support/store-at.ts';

test('a change of the settings says which', async () => {
  const room = await freshContext();
  const every = Array<boolean>(7).fill(true);
  const said = async (input: Parameters<typeof editSettings>[1]) =>
    good(await editSettings(room, input)).summary;
  expect(await said({ units: 'inch' })).toBe('Changed the units');
  expect(await said({ deliveryWeekdays: every, leadTimeDays: 4 })).toBe(
    'Changed the delivery days and days from order to door',
  );
  expect(await said({ away: { from: room.date(3), to: room.date(5) } })).toBe('Changed the days away');
});
