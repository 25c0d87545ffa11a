/** What was set is told by its name. */
import { expect, test } from 'vitest';
import { editSettings, loadSnapshot } from '../../src/actions/index.ts';
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

test('weather is expected spell by spell, of the same days the newer, and is taken away again', async () => {
  const room = await freshContext();
  const days = { from: room.date(3), to: room.date(5) };
  const weather = async () => (await loadSnapshot(room)).market?.weather.map(({ tempC }) => tempC);
  const first = good(await editSettings(room, { spell: { ...days, tempC: '-4,5' } }));
  expect(first.summary).toBe('Changed the weather outside');
  good(await editSettings(room, { spell: { from: room.date(1), to: room.date(2), tempC: 34 } }));
  good(await editSettings(room, { spell: { ...days, tempC: -8 } }));
  expect(await weather()).toEqual([34, -8]);
  good(await editSettings(room, { noSpell: days }));
  expect(await weather()).toEqual([34]);
});

test.each([
  [
    { purse: { currency: 'XYZ', hour: 0 } },
    '"XYZ" is not the code of a currency; write it as EUR, GBP or USD.',
  ],
  [
    { purse: { currency: 'EUR', hour: '£9' } },
    '"£9" is not in your currency, the Euro (EUR); write the sum in it, such as 9, or choose another in the settings.',
  ],
  [{ planWeeks: 3 }, '"3" is not a whole number from 4 to 26.'],
  [
    { spell: { from: '2024-12-02', to: '2024-12-01', tempC: 0 } },
    '"2024-12-02 to 2024-12-01" runs backwards; the earlier day comes first.',
  ],
  [
    { spell: { from: '2024-12-01', to: '2024-12-02', tempC: 70 } },
    '"70" is not a temperature outside from -50 to 50 degrees Celsius, such as -5.',
  ],
])('%j is refused', async (input, sentence) => {
  const refused = await editSettings(await freshContext(), input);
  expect(refused).toMatchObject({ ok: false, problem: { sentence } });
});
