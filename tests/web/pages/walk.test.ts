/** The walk is put in order as often as one likes, and kept by one act that everything follows. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { afterMove, inTypedPlaces } from '../../../src/web/pages/walk-moves.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { attributes, tags, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

/** Values of one field of the page's form, in order. */
const valuesOf = (html: string, field: string): string[] =>
  tags(html, 'input')
    .filter((tag) => tag.includes(` name="${field}"`))
    .flatMap((tag) => attributes(tag, 'value'));

const sheetOf = (html: string) => ({
  shelf: valuesOf(html, 'shelf'),
  place: valuesOf(html, 'place'),
  asOf: valuesOf(html, 'asOf'),
});

async function press(home: Home, html: string, move: string): Promise<string> {
  const answer = await home.send('/walk/moved', { ...sheetOf(html), move });
  expect(answer.status).toBe(200);
  return answer.text();
}

test('buttons move a shelf without writing; one press keeps it, and the list of animals follows', async () => {
  const home = await filledHome();
  const first = await home.see('/walk');
  expect(valuesOf(first, 'shelf')).toEqual(['R1|A2', 'R1|A10']);
  const acts = await home.acts();
  const moved = await press(home, first, 'up:R1|A10');
  expect(valuesOf(moved, 'shelf')).toEqual(['R1|A10', 'R1|A2']);
  expect(words(moved)).toContain('Moved, but not kept yet.');
  expect(await home.acts()).toBe(acts);
  const kept = await home.send('/walk', sheetOf(moved));
  expect([kept.status, kept.headers.get('location')]).toEqual([303, '/walk']);
  expect(await home.acts()).toBe(acts + 1);
  expect(valuesOf(await home.see('/walk'), 'shelf')).toEqual(['R1|A10', 'R1|A2']);
  const animals = await home.see('/animals');
  expect(animals.indexOf('/animals/A2"')).toBeLessThan(animals.indexOf('/animals/A1"'));
  const plain = await press(home, await home.see('/walk'), 'by name');
  expect(valuesOf(plain, 'shelf')).toEqual(['R1|A2', 'R1|A10']);
});

test('a place typed is taken; one that is no place is said, and what was typed stays', async () => {
  const home = await filledHome();
  const sheet = sheetOf(await home.see('/walk'));
  const acts = await home.acts();
  const refused = await home.send('/walk', { ...sheet, place: ['first', '2'] });
  expect(refused.status).toBe(422);
  const page = await refused.text();
  expect(words(page)).toContain('"first" is not a place; write a number from 1 to 2.');
  expect(valuesOf(page, 'place')).toEqual(['first', '2']);
  expect(await home.acts()).toBe(acts);
  await home.send('/walk', { ...sheet, place: ['1', '1'] });
  expect(valuesOf(await home.see('/walk'), 'shelf')).toEqual(['R1|A10', 'R1|A2']);
});

test('an animal moves to another shelf, or to a new one', async () => {
  const home = await filledHome();
  const shelf = { room: 'R1', shelf: 'A2', animal: 'A1', place: '1' };
  const nowhere = await home.send('/walk/shelf', { ...shelf, take: 'A1', to: '', newShelf: '' });
  expect(nowhere.status).toBe(422);
  expect(words(await nowhere.text())).toContain('Say to which shelf those marked “Moves” go.');
  const nobody = await home.send('/walk/shelf', { ...shelf, to: 'R1|A10', newShelf: '' });
  expect(words(await nobody.text())).toContain('Mark who moves there.');
  await home.send('/walk/shelf', { ...shelf, take: 'A1', to: 'R1|A10', newShelf: '' });
  expect(words(await home.see('/walk'))).toContain('A10 2 animals: Ash and Sac of five');
  expect(words(await home.see('/walk'))).toContain('Moved Ash from “A2” to “A10”');
  const two = { room: 'R1', shelf: 'A10', animal: ['A1', 'A2'], place: ['1', '2'] };
  await home.send('/walk/shelf', { ...two, take: 'A2', to: '', newShelf: 'By the window' });
  expect(words(await home.see('/walk'))).toContain('By the window 1 animal: Sac of five');
  expect((await home.app.request('/walk/shelf?room=R1&shelf=A2')).status).toBe(404);
});

const list = fc.uniqueArray(fc.string({ minLength: 1 }), { minLength: 1, maxLength: 20 });

test('no move and no typed place ever loses or doubles anything', () => {
  fc.assert(
    fc.property(list, fc.array(fc.integer({ min: 1, max: 9999 })), fc.nat(), (items, places, pick) => {
      const named = items[pick % items.length]!;
      for (const way of ['up', 'down', 'top', 'by name'])
        expect(afterMove(items, `${way}:${named}`, (item) => item).toSorted()).toEqual(items.toSorted());
      const placed = good(inTypedPlaces(items, places.map(String)));
      expect(placed.toSorted()).toEqual(items.toSorted());
    }),
  );
});

test('what is put in a place stands there, and up after down changes nothing', () => {
  fc.assert(
    fc.property(list, fc.nat(), fc.nat(), (items, from, to) => {
      const at = from % items.length;
      const place = to % items.length;
      const places = items.map((_, index) => String((index === at ? place : index) + 1));
      expect(good(inTypedPlaces(items, places))[place]).toBe(items[at]);
      const down = afterMove(items, `down:${items[at]}`, (item) => item);
      if (at < items.length - 1) expect(afterMove(down, `up:${items[at]}`, (item) => item)).toEqual(items);
    }),
  );
});
