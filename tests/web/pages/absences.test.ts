/** Days away: added and taken away one by one, whoever else does so at the same moment. */
import { expect, test } from 'vitest';
import { loadSnapshot } from '../../../src/actions/index.ts';
import { civilDate } from '../../../src/husbandry/calendar.ts';
import { filledHome, type Home } from '../../support/house.ts';

const CHRISTMAS = { from: '2024-12-24', to: '2024-12-27' };
const EASTER = { from: '2025-04-18', to: '2025-04-21' };

const away = async ({ room }: Home) =>
  (await loadSnapshot(room)).calendar.absences.map(({ from, to }) => ({
    from: civilDate(from),
    to: civilDate(to),
  }));

test('two people who add days away at the same moment both find theirs in the calendar', async () => {
  const home = await filledHome();
  const sent = await Promise.all([home.send('/away', EASTER), home.send('/away', CHRISTMAS)]);
  expect(sent.map(({ status }) => status)).toEqual([303, 303]);
  expect(await away(home)).toEqual([CHRISTMAS, EASTER]);
});

test('the same days stay once, and only those named fall out again', async () => {
  const home = await filledHome();
  for (const days of [EASTER, CHRISTMAS, CHRISTMAS]) await home.send('/away', days);
  expect(await away(home)).toEqual([CHRISTMAS, EASTER]);
  await home.send('/settings/absences/remove', { ...CHRISTMAS, to: '2024-12-26' });
  expect(await away(home)).toHaveLength(2);
  await home.send('/settings/absences/remove', CHRISTMAS);
  expect(await away(home)).toEqual([EASTER]);
});

test('days that run backwards are refused beside their field and change nothing', async () => {
  const home = await filledHome();
  await home.send('/away', EASTER);
  const refused = await home.send('/settings/absences', { from: '2024-12-27', to: '2024-12-24' });
  expect(refused.status).toBe(422);
  expect(await refused.text()).toContain('runs backwards; the earlier day comes first.');
  expect(await away(home)).toEqual([EASTER]);
});
