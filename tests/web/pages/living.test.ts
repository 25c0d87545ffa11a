/** Living stock on its pages: what was done is told, what was asked is asked, and temperatures come from a file. */
import { expect, test } from 'vitest';
import { OWN } from '../../support/door.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';

const DAY = '2024-10-04';
const sendFile = ({ app }: Home, fields: Readonly<Record<string, string | File>>) => {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  return app.request('/settings/rooms/temperatures', {
    method: 'POST',
    headers: { origin: OWN.origin },
    body: form,
  });
};
const csv = (...lines: string[]) => new File([lines.join('\n')], 'room.csv', { type: 'text/csv' });

test('a room reads its temperatures from a file, once, and shows what it has', async () => {
  const home = await filledHome();
  const before = await home.acts();
  const file = csv('date,temp', '2024-09-30 08:00,21.5', '2024-09-30 20:00,26', '2024-10-02,24');
  const twice = [1, 2].map(() => ({ room: 'R1', dates: '', formId: 'warm', file }));
  for (const fields of twice) expect((await sendFile(home, fields)).status).toBe(303);
  expect(await home.acts()).toBe(before + 1);
  expect(words(await home.see('/settings'))).toContain(
    'measured temperatures, 2 days, 30 Sep 2024 to 2 Oct 2024, 1 day between without; 21.5 to 26 °C',
  );
});

test('a file that cannot be read says so beside the field, and nothing changes', async () => {
  const home = await filledHome();
  const before = await home.acts();
  const refused = await sendFile(home, { room: 'R1', dates: '', file: csv('date,wind', '2024-10-02,4') });
  expect(refused.status).toBe(422);
  expect(words(await refused.text())).toContain(
    'No column was found for the temperature among "date", "wind".',
  );
  expect((await sendFile(home, { room: 'R1', dates: '' })).status).toBe(422);
  expect(await home.acts()).toBe(before);
});

test('a harvest beyond the bin is asked about, and done when the keeper is sure', async () => {
  const home = await filledHome();
  const fields = { heads: '900', sizeClass: 'acheta-domesticus|1/4 in', to: 'B2', day: DAY };
  const asked = await home.send('/larder/B1/harvest', fields);
  const html = await asked.text();
  expect(words(html)).toMatch(/There are about \d+ of that size in Small box; you wrote 900\./);
  expect(html).toContain('name="sure"');
  expect(await home.see('/larder/B1')).not.toContain('name="sure"');
  expect((await home.send('/larder/B1/harvest', { ...fields, sure: 'on' })).status).toBe(303);
});

test('the record of a bin tells what was done to it, lots that came together as one', async () => {
  const home = await filledHome();
  await home.send('/larder/B1/move', { heads: '60', size: '', to: 'B2', day: DAY });
  await home.send('/larder/B2/place', { room: 'R1', dayTemp: '30', nightTemp: '26', day: DAY });
  await home.send('/larder/B2/quarantine', { days: '5' });
  await home.send('/larder/B2/rest', { days: '9' });
  const told = words(await home.see('/larder/B2'));
  expect(told).toMatch(/60 moved in, 4(\.\d)?–6 mm\./);
  expect(told).toContain('Kept at 30 °C by day, 26 °C by night.');
  expect(told).toContain('Kept apart until 9 Oct 2024.');
  expect(told).toContain('Left alone until 13 Oct 2024.');
  expect(told).toContain('Apart until Wed 9 Oct; left alone until Sun 13 Oct.');
});

test('frozen stock is neither called alive nor asked how it lives', async () => {
  const home = await filledHome();
  await home.send('/larder/B1/cull', { heads: '50', size: '', how: 'frozen', day: DAY });
  const page = words(await home.see('/larder/B4'));
  expect(page).toContain('Frozen house crickets: 50 frozen');
  expect(page).toContain('The oldest was frozen on Fri 4 Oct; it keeps to Wed 2 Apr.');
  expect(page).not.toContain('Harvested');
  expect(page).not.toContain('A die-off');
  expect(words(await home.see('/larder'))).toContain('Frozen Name and prey Frozen');
});
