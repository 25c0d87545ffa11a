/** Labels as they are asked for, and the short addresses they carry. */
import { expect, test } from 'vitest';
import { addAnimal, importRows } from '../../../src/actions/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { attributes } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const codesOn = async ({ see }: Home, asked: string): Promise<string[]> =>
  [...(await see(`/labels?size=small&${asked}`)).matchAll(/class="label-code">([^<]+)</g)].map(
    (each) => each[1]!,
  );

test('they are chosen by what they are for, by shelf, by age and one by one', async () => {
  const home = await filledHome();
  expect(await codesOn(home, 'of=animals')).toEqual(['A1', 'A2']);
  expect(await codesOn(home, 'of=bins&of=cups')).toEqual(['B1', 'B2', 'B3']);
  expect(await codesOn(home, 'of=cups')).toEqual(['B3']);
  expect(await codesOn(home, 'of=animals&of=bins&which=shelf&shelf=A10')).toEqual(['A2']);
  expect(await codesOn(home, 'of=animals&which=ticked&code=A1&code=B2')).toEqual(['A1', 'B2']);
  home.room.pass(3);
  good(await addAnimal(home.room, { kind: 'brachypelma-hamorii', gaugeMm: 20, room: 'R1', name: 'New' }));
  expect(await codesOn(home, `of=animals&of=bins&which=new&since=${home.room.date(-1)}`)).toEqual(['A3']);
  expect(await home.see('/labels')).not.toContain('label-code');
});

test('each carries the address by which the page was opened', async () => {
  const { app } = await filledHome();
  const answer = await app.request('/labels?of=bins&size=large&skip=x', {
    headers: { host: 'larder.localhost:8181' },
  });
  const html = await answer.text();
  expect(html).toContain('<p class="label-address">larder.localhost:8181/larder/B1</p>');
  expect(await (await app.request('/labels')).text()).toContain(
    'You opened this page by an address of this machine alone',
  );
  expect(attributes(html, 'style')).toEqual([]);
});

test.each([
  ['/a/A2', '/animals/A2'],
  ['/A/A2', '/animals/A2'],
  ['/b/B1', '/larder/B1'],
  ['/B/B1', '/larder/B1'],
])('%s leads to %s', async (short, path) => {
  const { app } = await filledHome();
  const answer = await app.request(short);
  expect([answer.status, answer.headers.get('location')]).toEqual([302, path]);
});

test('many labels come two hundred at a time, each once, without the word of a moult that passes', async () => {
  const home = await filledHome();
  const animals = Array.from({ length: 210 }, (_, at) => ({
    kind: 'brachypelma-hamorii',
    gaugeMm: 20,
    room: 'R1',
    name: `Knee ${at}`,
  }));
  good(await importRows(home.room, { animals: { new: animals, changed: [] } }));
  const first = await codesOn(home, 'of=animals');
  expect(first).toHaveLength(200);
  const html = await home.see('/labels?size=small&of=animals');
  expect(html).toContain('beginning with number 1 of 212');
  expect(html).not.toContain('may moult');
  const [next] = attributes(html, 'href').filter((href) => href.includes('from=200'));
  const rest = [...(await home.see(next!.replaceAll('&amp;', '&'))).matchAll(/class="label-code">([^<]+)</g)];
  expect(rest).toHaveLength(12);
  expect(new Set([...first, ...rest.map((each) => each[1]!)]).size).toBe(212);
});
