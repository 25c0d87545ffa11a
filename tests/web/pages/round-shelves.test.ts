/** Shelf by shelf: each is an act of its own, fed from what the keeper wishes, and no tap is lost. */
import { expect, test } from 'vitest';
import type { Fields } from '../../support/house.ts';
import { tags, words } from '../../support/markup-words.ts';
import { animalOf, eventsOf, fiveAtTable, rowsIn } from '../../support/round-home.ts';
import { sheetIn } from '../../support/round-sheet.ts';

test('a shelf\u2019s button records its rows and every mark made elsewhere, and leaves the rest', async () => {
  const home = await fiveAtTable();
  const page = await home.see('/tonight');
  expect(tags(page, 'section').filter((tag) => tag.includes('data-shelf'))).toHaveLength(3);
  const answer = await home.send('/tonight', { ...sheetIn(page), shelf: 'A3', premoult: 'A2', notFed: 'A4' });
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/tonight']);
  expect(await animalOf(home, 'A3')).toMatchObject({ lastOffered: 20_000 });
  expect(await animalOf(home, 'A4')).toMatchObject({ lastOffered: 19_986 });
  expect(await animalOf(home, 'A2')).toMatchObject({ premoultSeen: 20_000 });
  expect(rowsIn(await home.see('/tonight'))).toEqual(['A1']);
});

test('several shelves sent from one page are several acts, each with one effect', async () => {
  const home = await fiveAtTable();
  const sheet = sheetIn(await home.see('/tonight'));
  const acts = await home.acts();
  const sent: Fields[] = [
    { ...sheet, shelf: 'A3', notFed: 'A1' },
    { ...sheet, shelf: 'A2', notFed: 'A1' },
    { ...sheet, shelf: 'A10' },
    { ...sheet, notFed: 'A1' },
  ];
  for (const fields of [...sent, ...sent]) {
    const answer = await home.send('/tonight', fields);
    expect([answer.status, answer.headers.get('location')]).toEqual([303, '/tonight']);
  }
  // Shelf A3 with the mark on Ash, and shelf A10; of A2 and the last button nothing was left.
  expect(await home.acts()).toBe(acts + 2);
  const heads = (await eventsOf(home, 'B2')).reduce((sum, { heads }) => sum + heads, 0);
  const shown = ['A3', 'A4', 'A5'].map((code) => Number(String(sheet[`offer:${code}`]).split('|')[1]));
  expect(heads).toBe(shown.reduce((a, b) => a + b, 0));
  expect(await animalOf(home, 'A1')).toMatchObject({ lastOffered: 19_986 });
});

test('a shelf where none of these animals stands any more is refused with a sentence', async () => {
  const home = await fiveAtTable();
  const refused = await home.send('/tonight', { ...sheetIn(await home.see('/tonight')), shelf: 'Z9' });
  expect(refused.status).toBe(422);
  expect(words(await refused.text())).toContain('None of these animals stands on "Z9" any more.');
});

test('a shelf is shown from another bin with every mark kept, and nothing is written', async () => {
  const home = await fiveAtTable();
  const before = sheetIn(await home.see('/tonight'));
  const acts = await home.acts();
  expect(before['offer:A3']).toMatch(/^B2\|/);
  const marks = { notFed: 'A1', moulted: 'A2', 'heads:A4': '1', 'from:A3': 'B4' };
  const answer = await home.send('/tonight/preview', { ...before, ...marks });
  const html = await answer.text();
  const after = sheetIn(html);
  expect([answer.status, await home.acts()]).toEqual([200, acts]);
  expect(['A3', 'A4', 'A5'].map((code) => String(after[`offer:${code}`]).slice(0, 2))).toEqual([
    'B4',
    'B4',
    'B4',
  ]);
  expect(after['offer:A1']).toBe(before['offer:A1']);
  expect(after).toMatchObject({ notFed: 'A1', moulted: 'A2', 'heads:A4': '1' });
  expect(words(html)).toContain('3 of 3 get theirs from it now.');
  expect(html).toContain('<option value="B4" selected="">');
  expect(html).not.toContain('role="alert"');
  await home.send('/tonight', { ...after, 'from:A3': 'B4' });
  expect((await eventsOf(home, 'B4')).length).toBeGreaterThan(0);
});

test('a bin chosen for one shelf stays chosen when another is sent', async () => {
  const home = await fiveAtTable();
  const sheet = { ...sheetIn(await home.see('/tonight')), 'from:A3': 'B4', 'from:A2': 'B4', shelf: 'A2' };
  const answer = await home.send('/tonight', sheet);
  const next = answer.headers.get('location')!;
  expect(next).toBe('/tonight?from%3AA3=B4');
  expect(sheetIn(await home.see(next))['offer:A3']).toMatch(/^B4\|/);
});

test('only bins that hold something for somebody on the shelf can be chosen', async () => {
  const home = await fiveAtTable();
  const page = await home.see('/tonight');
  const select = /<select[^>]*name="from:A3".*?<\/select>/s.exec(page)![0];
  expect(words(select)).toBe('what fits best Large box Roach tub');
});
