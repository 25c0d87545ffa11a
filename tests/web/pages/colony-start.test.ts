/** Colony start over the door: the job of sixty medium dubia a week, what is typed wrongly, and setting it up. */
import { expect, test } from 'vitest';
import { loadSnapshot } from '../../../src/actions/index.ts';
import { firstAdult, totalHeads } from '../../../src/husbandry/larder/index.ts';
import { binNow } from '../../../src/husbandry/supply/index.ts';
import { emptyHome, filledHome } from '../../support/house.ts';
import { insides } from '../../support/markup-words.ts';

/** Today is Friday 4 October 2024. */
const ASKED = {
  species: 'blaptica-dubia',
  'want-medium': '60',
  room: 'R1',
  day: '28',
  night: '82 F',
  begin: 'adults',
  females: '10',
  males: '4',
  space: '60 dm2',
  head: '0,25',
  starters: '60',
  week: '3',
  currency: 'EUR',
};
const query = (over: Readonly<Record<string, string>> = {}) => new URLSearchParams({ ...ASKED, ...over });
const at = (over: Readonly<Record<string, string>> = {}) => `/larder/colony-start?${query(over)}`;
const plain = (html: string) => html.replaceAll('&quot;', '"').replaceAll('&amp;', '&');

test('sixty medium dubia a week: the page works it out, then answers when, with how many, and from when', async () => {
  const { see } = await emptyHome();
  const first = plain(await see(at()));
  expect(first).toContain('Working it out');
  expect(first).toContain(`data-hx-get="/larder/colony-start/answer?${query()}"`);
  const html = await see(at({ wait: '1' }));
  expect(html).toMatch(
    /<h1>Start 10 females and 4 males today to take 60 medium dubia roaches a week from about \d+ \w+ 2025<\/h1>/,
  );
  expect(html).toMatch(/Until then buy about [12],\d00\./);
  const needed = Number(/(\d+) females and \d+ males\. \d+ of 100 such colonies/.exec(html)?.[1]);
  expect(needed).toBeGreaterThan(30);
  expect(needed).toBeLessThan(45);
  for (const words of ['Cheaper than buying', '1 bin.', 'warm the bins by', 'both lost in about'])
    expect(html).toContain(words);
  expect(html).toContain('value="82 F"');
});

test('the answer is kept: asked again the page has it at once, and so has the part alone', async () => {
  const { see } = await emptyHome();
  const part = await see(`/larder/colony-start/answer?${query()}`);
  expect(part).toMatch(/^<section class="colony-answer"/);
  expect(await see(at())).toContain(insides(part, 'h1')[0]!);
});

test('with a wanted day it says by when to start', async () => {
  const { see } = await emptyHome();
  expect(await see(at({ ready: '2027-06-20', wait: '1' }))).toMatch(
    /<h1>Start 10 females and 4 males by \d+ \w+ 202[56] to take .* from about 20 June 2027<\/h1>/,
  );
});

test.each([
  [{ day: 'warm' }, '"warm" is not a temperature'],
  [{ day: '12', night: '50 F' }, 'Nothing develops at 10–12 °C: for nymphs it must be warmer than 15 °C.'],
  [{ 'want-medium': 'many' }, '"many" is not a whole number from 0'],
  [{ 'want-medium': '' }, 'Say how many you want each week'],
  [{ males: '0' }, '10 females and 0 males cannot breed'],
  [{ begin: 'young', size: 'blaptica-dubia|huge' }, '"huge" is not a size of the dubia roach'],
  [{ begin: 'eggs' }, '"eggs" is not one of: adults, young'],
  [{ space: 'big' }, '"big" is not a size that can be read'],
  [{ space: '40 l' }, '"40 l" does not tell how many dubia roaches a bin holds; give its surface in dm2'],
  [{ capacity: '0' }, '"0" is not a whole number from 1'],
  [{ colour: 'red' }, '"colour" is not a field known here'],
  [{ head: 'cheap' }, '"cheap" is not a price'],
  [{ head: '' }, 'Say what one bought head costs too'],
  [{ ready: '2024-10-01' }, '"2024-10-01" is not ahead'],
  [{ ready: 'spring' }, '"spring" is not a date'],
  [{ room: 'R9' }, '"R9" is not a room here'],
  [{ species: 'drosophila-hydei' }, 'are raised in cups, not in colonies'],
  [{ species: 'unicorn' }, '"unicorn" is no prey known here'],
])('%o is refused beside its field, and what was typed stays', async (over, sentence) => {
  const { app } = await emptyHome();
  const answer = await app.request(at(over as Record<string, string>));
  const html = plain(await answer.text());
  expect(answer.status).toBe(422);
  expect(html).toContain(sentence);
  expect(html).toContain('value="EUR"');
  expect(html).not.toContain('Working it out');
});

test('every field that is typed wrongly stays as it was typed', async () => {
  const { see } = await emptyHome();
  const html = await see(at({ day: 'warm', 'want-medium': 'many', females: 'ten', head: 'cheap' }));
  for (const typed of ['warm', 'many', 'ten', 'cheap']) {
    expect(html).toContain(`value="${typed}"`);
    expect(plain(html)).toContain(`"${typed}" is not`);
  }
});

test('a temperature beyond what was measured is worked out, and said to be', async () => {
  const { see } = await emptyHome();
  const html = await see(at({ day: '33', night: '33', wait: '1' }));
  expect(html).toContain('33 °C is outside what was measured for nymphs (24–30 °C)');
});

test('what the room eats of the prey is put in as what is wanted, where it is kept here', async () => {
  const { see } = await filledHome();
  const html = await see('/larder/colony-start?species=acheta-domesticus');
  expect(html).toContain('How many house crickets a week');
  expect(html).toMatch(/name="want-[^"]+"[^>]* value="[1-9]\d*"/);
  expect(html).not.toContain('Working it out');
});

test('setting it up adds the colony with its room, its size and its starters, once', async () => {
  const { room, send, acts } = await emptyHome();
  const before = await acts();
  const fields = { formId: 'set-up-1' };
  const answer = await send(at(), fields);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/larder/B1']);
  await send(at(), fields);
  expect(await acts()).toBe(before + 1);
  const { bins } = await loadSnapshot(room);
  expect(bins).toHaveLength(1);
  expect(bins[0]).toMatchObject({
    name: 'Dubia roach colony',
    role: 'colony',
    room: 'R1',
    keepAdults: true,
    space: { by: 'area', units: 60 },
  });
  expect(bins[0]!.events).toMatchObject([
    { kind: 'counted', heads: 14 },
    { kind: 'sexed', females: 10, males: 4 },
  ]);
  const { chain, state } = binNow(await loadSnapshot(room), bins[0]!);
  expect(totalHeads(state.heads, firstAdult(chain))).toBeCloseTo(14, 6);
  expect(state.femaleShare).toBeCloseTo(10 / 14, 9);
});

test('a question that cannot be answered sets nothing up', async () => {
  const { send, acts } = await emptyHome();
  const before = await acts();
  const answer = await send(at({ males: '0' }), {});
  expect(answer.status).toBe(422);
  expect(await acts()).toBe(before);
});
