/** A bin's page: it answers at once, the rest when it is waited for, and a crash with one tap. */
import { expect, test } from 'vitest';
import { addBin, countBin, dieOff, foundDead } from '../../../src/actions/index.ts';
import { filledHome } from '../../support/house.ts';
import { attributes, insides, tags, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const heading = (html: string) => words(insides(html, 'h1')[0] ?? '');

test('it answers at once, and the coming weeks come when they are waited for', async () => {
  const { see } = await filledHome();
  const soon = await see('/larder/B1');
  expect(heading(soon)).toMatch(/alive; too large for/);
  expect(soon).toContain('data-hx-get="/larder/B1?wait=1"');
  expect(soon).not.toContain('<figure');
  const whole = await see('/larder/B1?wait=1');
  expect(heading(whole)).toBe(heading(soon));
  expect(insides(whole, 'figcaption')).toHaveLength(2);
  expect(whole).not.toContain('data-hx-get="/larder/B1');
});

test('a harvest starts at the size the middle one has', async () => {
  const { room, see } = await filledHome();
  good(await countBin(room, { bin: 'B1', heads: 100, fromMm: 13, toMm: 15 }));
  const [harvest] = (await see('/larder/B1')).match(/<select[^>]*name="sizeClass".*?<\/select>/s) ?? [''];
  expect(harvest).toMatch(/value="acheta-domesticus\|1\/2 in" selected/);
});

test('left alone, it says until when, and feeds only those for whom nothing else is there', async () => {
  const { see, send, room } = await filledHome();
  const eaten = async (bin: string): Promise<number> =>
    Number(/(\d+) eaten/.exec(words(await see(`/larder/${bin}?wait=1`)))?.[1] ?? 0);
  expect((await send('/larder/B1/rest', { days: '14' })).status).toBe(303);
  const alone = await eaten('B1');
  expect(alone).toBeGreaterThan(0);
  const crickets = { species: 'acheta-domesticus', room: 'R1', name: 'Spare box' };
  good(await addBin(room, { ...crickets, lot: { heads: 200, fromMm: 4, toMm: 6 }, day: room.date(0) }));
  expect(await eaten('B1')).toBe(0);
  expect(await eaten('B4')).toBe(alone);
  expect(words(await see('/larder/B1?wait=1'))).toContain(
    'If nothing is taken out; it is left alone until Fri 18 Oct.',
  );
});

test('what was worked out is kept until something changes', async () => {
  const { see, room } = await filledHome();
  await see('/larder/B1?wait=1');
  expect(await see('/larder/B1')).toContain('<figure');
  good(await foundDead(room, { bin: 'B1', heads: 2 }));
  expect(await see('/larder/B1')).not.toContain('<figure');
});

test.each([
  ['a count of heads', ''],
  ['a count with lengths', 'acheta-domesticus|1/4 in'],
])('after %s it says what was expected, not before', async (_, size) => {
  const { see, send, room } = await filledHome();
  const crickets = { species: 'acheta-domesticus', room: 'R1', name: 'Old box' };
  good(await addBin(room, { ...crickets, lot: { heads: 200, fromMm: 4, toMm: 5 }, day: room.date(-9) }));
  expect(await see('/larder/B4')).not.toContain('were expected');
  await send('/larder/B4/count', { heads: '150', size, day: room.date(0) });
  expect(words(await see('/larder/B4'))).toMatch(/150 counted on Fri 4 Oct; about 1[5-9]0 were expected/);
});

test('of a colony the grown can be counted apart; what cannot be is said beside the field', async () => {
  const { see, send, room } = await filledHome();
  const roaches = { species: 'blaptica-dubia', room: 'R1', name: 'Tub', role: 'colony' as const };
  good(await addBin(room, { ...roaches, lot: { heads: 200, fromMm: 5, toMm: 42 }, day: room.date(-9) }));
  expect(await see('/larder/B1')).not.toContain('Of them grown');
  expect(words(await see('/larder/B4'))).toContain('Of them grown');
  const sent = await send('/larder/B4/count', { heads: '150', grown: '151', size: '', day: room.date(0) });
  const html = await sent.text();
  expect(words(html)).toContain('151 grown cannot be among 150 in all.');
  const [field] = tags(html, 'input').filter((tag) => tag.includes('name="grown"'));
  expect(attributes(field!, 'value')).toEqual(['151']);
  expect(
    (await send('/larder/B4/count', { heads: '150', grown: '30', size: '', day: room.date(0) })).status,
  ).toBe(303);
  expect(words(await see('/history'))).toContain('Counted 150 in Tub, 30 of them grown.');
});

test('a crash is one tap, and the same page says what it means and offers to undo it', async () => {
  const { see, send, room } = await filledHome();
  const [none] = tags(await see('/larder/B1'), 'button').filter((tag) => tag.includes('name="left"'));
  expect(attributes(none!, 'value')).toEqual(['0']);
  const sent = await send('/larder/B1/die-off', { left: '0', day: room.date(0) });
  expect(sent.status).toBe(303);
  expect(sent.headers.get('location')).toBe('/larder/B1');
  const soon = await see('/larder/B1');
  expect(heading(soon)).toMatch(/crashed: nothing left alive$/);
  expect(words(soon)).toContain('who goes short is being worked out');
  expect(words(soon)).toContain('It may be a virus');
  expect(words(soon)).toContain('the same prey in the same room');
  const whole = words(await see('/larder/B1?wait=1'));
  expect(whole).toMatch(/go short from about|nobody goes short for it within 28 days/);
  expect(soon).toMatch(/action="\/undo\//);
});

test('a crash of long ago is history', async () => {
  const { see, room } = await filledHome();
  good(await dieOff(room, { bin: 'B1', left: 10, day: room.date(-8) }));
  expect(heading(await see('/larder/B1'))).not.toContain('crashed');
});

test('the larder says what is bred, which cups to start, and what each bin comes to', async () => {
  const said = words(await (await filledHome()).see('/larder'));
  expect(said).toContain('If one is lost');
  expect(said).toContain('Cups to start');
  expect(said).toContain('Too large for');
});
