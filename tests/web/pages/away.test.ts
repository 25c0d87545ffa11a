/** Days away: who can wait is answered from the address, saving is one act that the forecast counts, the sheet is for paper. */
import { expect, test } from 'vitest';
import { addAnimal, loadSnapshot } from '../../../src/actions/index.ts';
import { filledHome } from '../../support/house.ts';
import { good } from '../../support/store-at.ts';

/** Today is Friday 4 October 2024; A1 was fed 14 days ago, the spiderlings of A2 nine days ago. */
const AWAY = '/away?from=2024-10-06&to=2024-10-20';

test('without dates the page asks for them, and with days in the calendar it answers for the next of them', async () => {
  const { see, send } = await filledHome();
  expect(await see('/away')).toContain('<h1>When you are away</h1>');
  await send('/settings/absences', { from: '2024-10-06', to: '2024-10-20' });
  expect(await see('/away')).toContain('Away Sun 6 Oct to Sun 20 Oct');
});

test('it says how many can wait and how many need a sitter, and names the prey for the evenings', async () => {
  const { see } = await filledHome();
  const html = await see(AWAY);
  expect(html).toMatch(/<h1>Of 2 animals none can wait: 2 need a sitter on \d evenings?<\/h1>/);
  expect(html).toContain('The sitter takes out of the larder');
  expect(html).toMatch(/Small box.*house crickets/s);
  expect(html).toContain('A parcel comes while nobody is there');
});

test('an absence of two days lets everybody wait', async () => {
  const { see } = await filledHome();
  expect(await see('/away?from=2024-10-07&to=2024-10-08')).toContain('All 2 animals can wait');
});

test.each([
  ['/away?from=2024-10-20&to=2024-10-06', '"2024-10-20 to 2024-10-06" runs backwards'],
  ['/away?from=2024-09-01&to=2024-09-06', '"2024-09-06" is over'],
  ['/away?from=soon&to=2024-10-06', '"soon" is not a date'],
  ['/away?from=2024-10-06&to=2025-10-06', 'longer than 90 days'],
])('%s is refused with what was typed', async (path, sentence) => {
  const { app } = await filledHome();
  const answer = await app.request(path);
  const html = (await answer.text()).replaceAll('&quot;', '"');
  expect(answer.status).toBe(422);
  expect(html).toContain(sentence);
  expect(html).toContain('type="date"');
});

test('saving is one act: the Sunday check counts the days, and undoing takes them out again', async () => {
  const { see, send, acts, room, app } = await filledHome();
  const before = await acts();
  const saved = await send('/away', { from: '2024-10-06', to: '2024-10-20' });
  expect(saved.status).toBe(303);
  expect(saved.headers.get('location')).toBe(AWAY);
  expect(await acts()).toBe(before + 1);
  const html = await see(AWAY);
  expect(html).toContain('These days are in your calendar.');
  expect(html).toContain('Sun 6 Oct, Tue 8 Oct');
  const mealsDue = async () => (await (await app.request('/api/check.json')).json()).mealsDue;
  const counted = await mealsDue();
  await send(`/undo/${before + 1}`, {});
  expect((await loadSnapshot(room)).calendar.absences).toEqual([]);
  expect(counted).toBeLessThan(await mealsDue());
});

test('days that run backwards are not saved, and are shown as typed', async () => {
  const { send, acts } = await filledHome();
  const before = await acts();
  const refused = await send('/away', { from: '2024-10-20', to: '2024-10-06' });
  expect(refused.status).toBe(422);
  expect(await refused.text()).toContain('runs backwards');
  expect(await acts()).toBe(before);
});

test("the sitter's sheet names box, animal, prey and bin, whom to leave alone, and leaves the number to be written", async () => {
  const { see, room } = await filledHome();
  good(
    await addAnimal(room, {
      name: 'Clove',
      kind: 'brachypelma-hamorii',
      gaugeMm: 30,
      room: 'R1',
      shelf: 'A2',
    }),
  );
  const sheet = await see(AWAY.replace('/away', '/away/sheet'));
  expect(sheet).toContain('Feeding while I am away, Sun 6 Oct to Sun 20 Oct');
  expect(sheet).toContain('An animal on its back is not dead: it is moulting.');
  expect(sheet).toMatch(/A2<\/td>.*Sac of five.*house crickets.*Small box/s);
  expect(sheet).toContain('Call me on');
  expect(sheet).toContain('within 24 hours');
});
