/** The first steps: from nothing to an answer of one's own, with guesses said and nothing refused for want of a size. */
import { expect, test } from 'vitest';
import { loadSnapshot } from '../../../src/actions/index.ts';
import { emptyHome } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';

const SPIDER = { kind: 'brachypelma-hamorii', name: '', count: '3', size: '', stage: 'young', room: 'R1' };
const CRICKETS = {
  species: 'acheta-domesticus',
  size: 'acheta-domesticus|pinhead',
  heads: '200',
  name: 'Box',
  room: 'R1',
};

test('three short forms lead from an empty room to an answer', async () => {
  const { room, see, send } = await emptyHome();
  expect(words(await see('/start'))).toContain('Three steps to your first answer');
  const added = await send('/start/animal', SPIDER);
  expect([added.status, added.headers.get('location')]).toEqual([303, '/start']);
  expect(words(await see('/start'))).toContain('One more step to your first answer');
  await send('/start/room', { room: 'R1', dayTemp: '79 F', nightTemp: '20' });
  await send('/start/feeding', { weekday: ['1', '4'] });
  await send('/start/bin', CRICKETS);
  const { animals, bins, rooms, calendar } = await loadSnapshot(room);
  expect(animals).toMatchObject([{ count: 3, gaugeAssumed: true }]);
  expect(bins[0]?.events).toMatchObject([{ kind: 'counted', heads: 200 }]);
  expect(rooms[0]?.dayTempC).toBeCloseTo(26.1, 1);
  expect(calendar.feedingWeekdays.map(Number)).toEqual([0, 1, 0, 0, 1, 0, 0]);
  const done = words(await see('/start'));
  expect(done).toContain('Your first answer is ready');
  expect(words(await see('/'))).toMatch(/Nobody misses a meal in/);
});

test('what is guessed is said, and goes once it is known', async () => {
  const { see, send } = await emptyHome();
  await send('/start/animal', SPIDER);
  await send('/start/bin', { ...CRICKETS, heads: '0' });
  const guessed = words(await see('/start'));
  expect(guessed).toContain('1 size taken from the stage: measure when you can.');
  expect(guessed).toContain('1 animal without a last meal on record: counted as due now.');
  expect(guessed).toContain('1 box nobody has counted: taken as empty.');
  expect(guessed).toContain('Room: 26 °C by day, 22 °C by night, a usual warm room.');
  await send('/start/room', { room: 'R1', dayTemp: '24', nightTemp: '20' });
  expect(words(await see('/start'))).not.toContain('a usual warm room');
});

test.each([
  ['animal', { ...SPIDER, kind: '' }, 'Choose a kind from the list.'],
  ['animal', { ...SPIDER, size: '4 elephants' }, '4 elephants'],
  ['animal', { ...SPIDER, count: 'many' }, '"many" is not a whole number'],
  ['room', { room: 'R1', dayTemp: '95', nightTemp: '20' }, '95'],
  ['bin', { ...CRICKETS, species: '' }, 'Choose the prey from the list.'],
  ['bin', { ...CRICKETS, species: 'blaptica-dubia' }, '"pinhead" is not a size of the dubia roach'],
])('a slip in the form of the %s is said beside it and what was typed stays', async (step, fields, said) => {
  const { see, send, acts } = await emptyHome();
  await see('/start');
  const before = await acts();
  const answer = await send(`/start/${step}`, fields as Record<string, string>);
  expect(answer.status).toBe(422);
  const html = await answer.text();
  expect(words(html)).toContain(said);
  for (const typed of Object.values(fields).filter((value) => value !== '' && value !== 'young'))
    expect(html).toContain(`value="${typed}"`);
  expect(await acts()).toBe(before);
});

test('where the demo room is, it goes first', async () => {
  const { see, send } = await emptyHome();
  await send('/demo/start', {});
  const html = await see('/start');
  expect(words(html)).toContain('Clear the demo room');
  expect(html).not.toContain('action="/start/animal"');
});
