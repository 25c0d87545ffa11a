/** The morning: who needs a look first, shelf by shelf, by two people, with those who have died since. */
import { expect, test } from 'vitest';
import {
  addAnimal,
  loadSnapshot,
  recordDied,
  recordEvening,
  recordMorning,
  recordPremoult,
} from '../../../src/actions/index.ts';
import { offersOf } from '../../../src/store/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { attributes, tags, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const DAY = '2024-10-04';
const TODAY = 20_000;
const EVERYBODY = ['A1', 'A2', 'A3', 'A4', 'A5'];

const offering = (animal: string) => ({
  animal,
  outcome: 'offered' as const,
  bin: 'B2',
  heads: 2,
  fromMm: 10,
  toMm: 12,
});

/** Five animals on three shelves, all offered something last evening. */
async function theMorning(before?: (home: Home) => Promise<void>): Promise<Home> {
  const home = await filledHome();
  const { room } = home;
  const like = { kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 50, shelf: 'A3' };
  for (const name of ['Cedar', 'Dill', 'Elm']) good(await addAnimal(room, { ...like, name }));
  await before?.(home);
  good(await recordEvening(room, { day: DAY, rows: EVERYBODY.map(offering) }));
  if (room.clock().today === TODAY) room.pass(1);
  return home;
}

const fieldsIn = (html: string, name: string): string[] =>
  tags(html, 'input')
    .filter((tag) => tag.includes(` name="${name}"`))
    .flatMap((tag) => attributes(tag, 'value'));

/** The page's hidden fields. */
function sheetOf(html: string) {
  const animal = fieldsIn(html, 'animal');
  const at = animal.map((code) => [`at:${code}`, fieldsIn(html, `at:${code}`)[0]!]);
  return { day: DAY, animal, ...Object.fromEntries(at) };
}

const outcomes = async ({ room }: Home): Promise<Record<string, string | null>> =>
  Object.fromEntries((await room.store.ask(offersOf(TODAY))).map(({ animal, outcome }) => [animal, outcome]));

test('who may moult comes first, then who refused or left some last time, then the walk', async () => {
  const home = await theMorning(async ({ room }) => {
    good(await recordEvening(room, { day: room.date(-7), rows: EVERYBODY.map(offering) }));
    const exceptions = [
      { animal: 'A5', outcome: 'refused' as const },
      { animal: 'A2', outcome: 'part-taken' as const },
    ];
    good(await recordMorning(room, { evening: room.date(-7), exceptions }));
    good(await recordPremoult(room, { animal: 'A4', day: room.date(-3) }));
  });
  const html = await home.see('/morning');
  expect(fieldsIn(html, 'animal')).toEqual(['A4', 'A5', 'A2', 'A1', 'A3']);
  expect(words(html)).toContain('refused last time');
  expect(words(html)).toContain('left some last time');
});

test('an animal known to leave food is looked at though it ate last time', async () => {
  const home = await theMorning(async ({ room }) => {
    for (const [days, outcome] of [
      [-28, 'refused'],
      [-21, 'refused'],
      [-14, 'refused'],
      [-7, 'taken'],
    ] as const) {
      const evening = room.date(days);
      good(await recordEvening(room, { day: evening, rows: [offering('A5')] }));
      good(await recordMorning(room, { evening, exceptions: [{ animal: 'A5', outcome }] }));
    }
  });
  const html = await home.see('/morning');
  expect(fieldsIn(html, 'animal')[0]).toBe('A5');
  expect(words(html)).toContain('took 1 of its last 4 meals');
});

test('a shelf’s button closes that shelf and what is marked elsewhere; each is an act of its own page', async () => {
  const home = await theMorning();
  const sheet = { ...sheetOf(await home.see('/morning')), formId: 'page' };
  const acts = await home.acts();
  const first = { ...sheet, shelf: 'A3', 'became:A3': 'refused', 'became:A1': 'part-taken' };
  const answer = await home.send('/morning', first);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/morning']);
  expect(await outcomes(home)).toEqual({
    A1: 'part-taken',
    A2: null,
    A3: 'refused',
    A4: 'taken',
    A5: 'taken',
  });
  await home.send('/morning', first);
  expect(await home.acts()).toBe(acts + 1);
  const last = await home.send('/morning', { ...sheet, shelf: 'A10' });
  expect(last.headers.get('location')).toBe('/tonight');
  expect(await home.acts()).toBe(acts + 2);
  expect((await outcomes(home)).A2).toBe('taken');
});

test('of two people closing the same morning the second is told, and a mark by hand is not lost', async () => {
  const home = await theMorning();
  const sheet = sheetOf(await home.see('/morning'));
  await home.send('/morning', { ...sheet, 'became:A1': 'refused' });
  const acts = await home.acts();
  const nothing = await home.send('/morning', sheet);
  expect(nothing.status).toBe(422);
  expect(words(await nothing.text())).toContain(
    'The morning after Fri 4 Oct is written down already. Nothing was changed.',
  );
  expect(await home.acts()).toBe(acts);
  const marks = { 'became:A1': 'part-taken', 'became:A3': 'refused' };
  const other = await home.send('/morning', { ...sheet, ...marks });
  expect(other.status).toBe(303);
  expect(await outcomes(home)).toMatchObject({ A1: 'refused', A3: 'refused', A4: 'taken' });
  const cookie = other.headers.get('set-cookie')!.split(';')[0]!;
  const next = await home.app.request('/tonight', { headers: { cookie } });
  expect(words(await next.text())).toContain(
    'Marked otherwise by somebody else already, and left so: Ash refused (you: ate some).',
  );
});

test('a moult marked by two people is one moult', async () => {
  const home = await theMorning();
  const sheet = { ...sheetOf(await home.see('/morning')), 'became:A3': 'moulted' };
  await home.send('/morning', sheet);
  await home.send('/morning', sheet);
  const cedar = (await loadSnapshot(home.room)).animals.find(({ code }) => code === 'A3');
  expect(cedar?.gaugeMm).toBeLessThan(50 * 1.6);
  expect(cedar?.lastMoult?.found).toBe(TODAY + 1);
});

test('an outcome for an animal that has died since is a sentence, and the other marks stay', async () => {
  const home = await theMorning();
  const sheet = { ...sheetOf(await home.see('/morning')), 'became:A3': 'refused', 'became:A1': 'part-taken' };
  good(await recordDied(home.room, { animal: 'A3' }));
  const acts = await home.acts();
  const refused = await home.send('/morning', sheet);
  expect(refused.status).toBe(422);
  const html = await refused.text();
  expect(words(html)).toContain('Cedar no longer lives here (died on Sat 5 Oct)');
  const checked = tags(html, 'input').filter((tag) => / checked/.test(tag));
  expect(checked.flatMap((tag) => attributes(tag, 'name'))).toEqual(['became:A1']);
  expect(await home.acts()).toBe(acts);
  const again = { ...sheetOf(html), 'became:A1': 'part-taken' };
  expect((await home.send('/morning', again)).status).toBe(303);
  expect(await outcomes(home)).toEqual({ A1: 'part-taken', A2: 'taken', A4: 'taken', A5: 'taken' });
});

test('of several open evenings the oldest is asked of first, and how many remain is said', async () => {
  const home = await theMorning();
  const { room } = home;
  room.pass(2);
  good(await recordEvening(room, { rows: [offering('A1')] }));
  room.pass(1);
  const html = await home.see('/morning');
  expect(words(html)).toContain(
    'After Friday 4 October What became of 5 meals? 1 later evening waits after this one.',
  );
  const next = await home.send('/morning', sheetOf(html));
  expect(next.headers.get('location')).toBe('/morning');
  expect(words(await home.see('/morning'))).toContain('After Monday 7 October What became of 1 meal?');
});
