/** The page of a group: some taken out, heads counted anew. */
import { expect, test } from 'vitest';
import { loadSnapshot } from '../../../src/actions/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';

const split = { heads: '2', into: 'singles', name: 'Sling', gauge: '', room: 'R1', shelf: 'C1' };
const herd = async ({ room }: Home) =>
  (await loadSnapshot(room)).animals.map(({ name, count, gaugeMm, shelf }) => [name, count, gaugeMm, shelf]);

test('two of five become single animals on a shelf of their own, and say where they came from', async () => {
  const home = await filledHome();
  const answer = await home.send('/animals/A2/split', split);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/animals/A2']);
  expect(await herd(home)).toEqual([
    ['Ash', 1, 50, 'A2'],
    ['Sac of five', 3, 14, 'A10'],
    ['Sling 1', 1, 14, 'C1'],
    ['Sling 2', 1, 14, 'C1'],
  ]);
  expect(words(await home.see('/animals/A3'))).toContain('Taken out of Sac of five, ate on 25 Sep 2024.');
  expect(words(await home.see('/animals/A2'))).toContain('Heads 5 to 3');
  expect(words(await home.see('/animals/A2/split'))).toContain('At most 2: the last one keeps this record.');
});

test('or one new group, at a size of its own', async () => {
  const home = await filledHome();
  await home.send('/animals/A2/split', { ...split, into: 'group', name: 'The large ones', gauge: '2 cm' });
  expect(await herd(home)).toContainEqual(['The large ones', 2, 20, 'C1']);
});

test('heads are counted anew', async () => {
  const home = await filledHome();
  await home.send('/animals/A2/heads', { heads: '7' });
  expect(await herd(home)).toContainEqual(['Sac of five', 7, 14, 'A10']);
});

test.each([
  [{ ...split, heads: '5' }, 'heads', '&quot;5&quot; leaves nobody of the 5'],
  [{ ...split, heads: 'some' }, 'heads', '&quot;some&quot; is not a whole number'],
  [{ ...split, gauge: 'big' }, 'gauge', '&quot;big&quot; is not a size'],
  [{ ...split, into: 'pairs' }, 'into', 'Choose what they become.'],
] as const)('%o is refused beside %s, with what was typed', async (fields, field, sentence) => {
  const home = await filledHome();
  const before = await home.acts();
  const answer = await home.send('/animals/A2/split', fields);
  expect(answer.status).toBe(422);
  const html = await answer.text();
  expect(new RegExp(`id="split-${field}-problem">([^<]*)<`).exec(html)?.[1]).toContain(sentence);
  expect(html).toContain('value="Sling"');
  expect(await home.acts()).toBe(before);
});
