/** The round: what is marked and the rest become one act; the morning closes it. */
import { expect, test } from 'vitest';
import { loadSnapshot } from '../../../src/actions/index.ts';
import { latestActs } from '../../../src/store/index.ts';
import { filledHome } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';
import { animalOf, DAY, eventsOf, fiveAtTable, rowsIn } from '../../support/round-home.ts';
import { sheetIn } from '../../support/round-sheet.ts';

test('who is not marked was offered what was proposed, and the prey has left the bins', async () => {
  const home = await fiveAtTable();
  const animals = rowsIn(await home.see('/tonight'));
  expect(animals).toEqual(['A1', 'A3', 'A4', 'A5', 'A2']);
  const answer = await home.send('/tonight', { day: DAY, animal: animals });
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/tonight']);
  expect(await animalOf(home, 'A3')).toMatchObject({ lastOffered: 20_000, lastOutcome: 'offered' });
  const eaten = [...(await eventsOf(home, 'B1')), ...(await eventsOf(home, 'B2'))];
  expect(eaten.length).toBeGreaterThan(0);
  expect(rowsIn(await home.see('/tonight'))).toEqual([]);
});

test('marks of every sort are one act, and one undo takes all of it back', async () => {
  const home = await fiveAtTable();
  const before = await loadSnapshot(home.room);
  const acts = await home.acts();
  await home.send('/tonight', {
    day: DAY,
    animal: ['A1', 'A2', 'A3', 'A4', 'A5'],
    notFed: ['A1'],
    premoult: ['A3'],
    moulted: ['A4'],
    died: ['A5'],
    'heads:A2': '7',
    'bin:A2': 'B1',
  });
  expect(await home.acts()).toBe(acts + 1);
  expect(await animalOf(home, 'A1')).toMatchObject({ lastOffered: 19_986 });
  expect(await animalOf(home, 'A3')).toMatchObject({ premoultSeen: 20_000 });
  expect(await animalOf(home, 'A4')).toMatchObject({ lastMoult: { found: 20_000 }, gaugeAssumed: true });
  expect(await animalOf(home, 'A5')).toBeUndefined();
  expect(await eventsOf(home, 'B1')).toMatchObject([{ heads: 7 }]);
  const [act] = await home.room.store.ask(latestActs(1));
  await home.send(`/undo/${act!.id}`, {});
  const after = await loadSnapshot(home.room);
  expect({ ...after, revision: 0 }).toEqual({ ...before, revision: 0 });
});

test('another count or bin is taken as it is said, and an empty bin is told beside its field', async () => {
  const home = await filledHome();
  await home.send('/larder/new', {
    name: 'Empty box',
    role: 'holding',
    species: 'acheta-domesticus',
    room: 'R1',
    capacity: '',
    heads: '',
    size: '',
    day: DAY,
  });
  const acts = await home.acts();
  const refused = await home.send('/tonight', {
    day: DAY,
    animal: 'A1',
    notFed: [],
    'heads:A1': '2',
    'bin:A1': 'B4',
  });
  expect(refused.status).toBe(422);
  expect(await refused.text()).toMatch(/id="round-bin:A1-problem">&quot;Empty box&quot; holds nothing alive/);
  const negative = await home.send('/tonight', { day: DAY, animal: 'A1', 'heads:A1': '-3', 'bin:A1': '' });
  expect(await negative.text()).toContain('&quot;-3&quot; is not a whole number');
  expect(await home.acts()).toBe(acts);
  await home.send('/tonight', { day: DAY, animal: 'A1', 'heads:A1': '2', 'bin:A1': 'B2' });
  expect(await eventsOf(home, 'B2')).toMatchObject([{ heads: 2 }]);
});

test('the same round sent again has no second effect, even on a sheet of its own', async () => {
  const home = await filledHome();
  const { formId: _, ...sheet } = sheetIn(await home.see('/tonight'));
  const answers = [
    await home.send('/tonight', { ...sheet, formId: 'x' }),
    await home.send('/tonight', { ...sheet, formId: 'x' }),
  ];
  expect(answers.map(({ status }) => status)).toEqual([303, 303]);
  const acts = await home.acts();
  const other = await home.send('/tonight', sheet);
  expect([other.status, await home.acts()]).toEqual([303, acts]);
  const told = await home.see(other.headers.get('location')!);
  expect(words(told)).toContain('Round of Fri 4 Oct: 2 fed, 0 not, just now: Ash offered');
  expect(words(told)).toContain('Not written twice.');
});

test('the morning asks what became of each meal and closes the rest as eaten', async () => {
  const home = await fiveAtTable();
  await home.send('/tonight', { day: DAY, animal: ['A1', 'A2', 'A3', 'A4', 'A5'] });
  home.room.pass(1);
  expect(await home.see('/tonight')).toContain('5 meals');
  expect(rowsIn(await home.see('/morning'))).toEqual(['A1', 'A3', 'A4', 'A5', 'A2']);
  const acts = await home.acts();
  await home.send('/morning', {
    day: DAY,
    animal: ['A1', 'A2', 'A3', 'A4', 'A5'],
    refused: ['A1', 'A4'],
    partTaken: 'A3',
    moulted: 'A4',
  });
  expect(await home.acts()).toBe(acts + 1);
  const outcomes = await Promise.all(['A1', 'A2', 'A3', 'A4'].map((code) => animalOf(home, code)));
  expect(outcomes.map((animal) => animal?.lastOutcome)).toEqual([
    'refused',
    'taken',
    'part-taken',
    'refused',
  ]);
  expect(outcomes[3]?.lastMoult?.found).toBe(20_001);
  expect(await home.see('/morning')).toContain('Every meal is accounted for');
});

test('what happened stands in the record of the animal and of the bin', async () => {
  const home = await filledHome();
  await home.send('/tonight', { day: DAY, animal: 'A1', 'heads:A1': '2', 'bin:A1': 'B2' });
  await home.send('/animals/A1/measured', { gauge: '52', day: DAY });
  const page = await home.see('/animals/A1');
  expect(page).toMatch(/Offered 2 house crickets, \d+–\d+ mm, from Large box\./);
  expect(page).toContain('Measured: 52 mm.');
  expect(await home.see('/larder/B2')).toContain('2 for Ash.');
});
