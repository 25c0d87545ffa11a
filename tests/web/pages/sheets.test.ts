/** Paper: the sheets list who the evening lists, and a sheet keyed in is the round done by taps. */
import { expect, test } from 'vitest';
import { addAnimal, arrangeShelves, loadSnapshot, recordPremoult } from '../../../src/actions/index.ts';
import { eveningOf } from '../../../src/husbandry/supply/index.ts';
import { offersOf } from '../../../src/store/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { attributes, insides, tags, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const DAY = '2024-10-04';

/** Ash, the group, five more of Ash's size of whom one is about to moult and one ate yesterday. */
async function sevenAtTable(): Promise<Home> {
  const home = await filledHome();
  const { room } = home;
  const like = { kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 50, shelf: 'A3' };
  for (const [name, days] of [
    ['Cedar', -14],
    ['Dill', -14],
    ['Elm', -14],
    ['Fern', -14],
    ['Gorse', -1],
  ] as const)
    good(await addAnimal(room, { ...like, name, lastTaken: room.date(days) }));
  good(await recordPremoult(room, { animal: 'A6', day: room.date(-3) }));
  return home;
}

/** Codes in the rows of a printed sheet, in order. */
const codesOn = (html: string): string[] => insides(html, 'td').filter((text) => /^A\d+$/.test(text));

test('the evening sheet lists exactly who eats and who must wait, in the order of the walk', async () => {
  const home = await sevenAtTable();
  const shelves = ['A3', 'A10', 'A2'].map((shelf) => ({ room: 'R1', shelf }));
  good(await arrangeShelves(home.room, { shelves }));
  const snapshot = await loadSnapshot(home.room);
  const { servings, withheld } = eveningOf(snapshot);
  const listed = new Set([...servings, ...withheld].map(({ animal }) => animal));
  const html = await home.see(`/tonight/sheet?day=${DAY}`);
  expect(codesOn(html)).toEqual(snapshot.animals.map(({ code }) => code).filter((code) => listed.has(code)));
  expect(codesOn(html)[0]).toBe('A3');
  expect(words(html)).toContain('Do not feed: about to moult');
  expect(words(html)).toContain('Friday 4 October 2024');
});

test('what is to be taken out is what the rows add up to', async () => {
  const home = await sevenAtTable();
  const { servings } = eveningOf(await loadSnapshot(home.room));
  const heads = servings.reduce((sum, { offer }) => sum + (offer?.heads ?? 0), 0);
  const html = await home.see('/tonight/sheet');
  const picking = html.slice(html.indexOf('class="picking"'), html.indexOf('</section>'));
  const taken = [...picking.matchAll(/<b class="heads">(\d+)<\/b>/g)].map(([, many]) => Number(many));
  expect(taken.reduce((sum, many) => sum + many, 0)).toBe(heads);
  expect(words(picking)).toContain('medium house crickets');
});

test('a blank sheet has everybody, or only who may come due, and a column for each feeding evening', async () => {
  const home = await sevenAtTable();
  const all = await home.see('/tonight/sheet?blank=1&days=7');
  expect(codesOn(all)).toEqual((await loadSnapshot(home.room)).animals.map(({ code }) => code));
  expect(words(all)).toContain('Fri 4 Oct Sun 6 Oct Tue 8 Oct');
  const due = await home.see('/tonight/sheet?blank=1&days=2&who=due');
  expect(codesOn(due)).toEqual(['A1', 'A3', 'A4', 'A5', 'A6', 'A2']);
});

/** The page's form as it would be sent: hidden fields and what is typed. */
function formOf(html: string): Record<string, string[]> {
  const form = /<form[^>]*id="(?:round|key-in)".*?<\/form>/s.exec(html)?.[0] ?? '';
  const fields: Record<string, string[]> = {};
  for (const tag of tags(form, 'input')) {
    if (!/type="(hidden|text|number)"/.test(tag) || tag.includes('formId')) continue;
    const name = attributes(tag, 'name')[0]!;
    fields[name] = [...(fields[name] ?? []), attributes(tag, 'value')[0] ?? ''];
  }
  return fields;
}

/** All that is written of the room and the evening, but for when. */
async function written({ room }: Home) {
  const { revision: _, ...snapshot } = await loadSnapshot(room);
  const offers = (await room.store.ask(offersOf(20_000))).map(({ id: _id, ...offer }) => offer);
  return { snapshot, offers };
}

test('a sheet keyed in the next day is the round done by taps that evening', async () => {
  const byTaps = await sevenAtTable();
  const byKeys = await sevenAtTable();
  const round = formOf(await byTaps.see('/tonight'));
  await byTaps.send('/tonight', {
    ...round,
    notFed: 'A1',
    moulted: 'A4',
    died: 'A5',
    'heads:A2': '7',
    'bin:A2': 'B1',
  });
  byTaps.room.pass(1);
  byKeys.room.pass(1);
  const sheet = formOf(await byKeys.see(`/tonight/key-in?day=${DAY}`));
  expect(sheet.animal).toEqual(['A1', 'A3', 'A4', 'A5', 'A6', 'A2']);
  const acts = await byKeys.acts();
  const answer = await byKeys.send('/tonight/key-in', {
    ...sheet,
    'cell:A1': '0',
    'cell:A4': 'm',
    'cell:A5': 'D',
    'cell:A2': '7 b1',
  });
  expect([answer.status, answer.headers.get('location')]).toEqual([303, `/tonight?day=${DAY}`]);
  expect(await byKeys.acts()).toBe(acts + 1);
  expect(await written(byKeys)).toEqual(await written(byTaps));
});

test('every bad cell has its sentence, all that was typed stays, and nothing is written', async () => {
  const home = await sevenAtTable();
  const sheet = formOf(await home.see(`/tonight/key-in?day=${DAY}&who=all`));
  const acts = await home.acts();
  const cells = {
    'cell:A1': 'lots',
    'cell:A3': '3 b77',
    'cell:A4': '0 B1',
    'cell:A7': '4',
    'cell:A2': '2 r',
  };
  const refused = await home.send('/tonight/key-in', { ...sheet, ...cells });
  expect(refused.status).toBe(422);
  const html = await refused.text();
  const said = words(html);
  expect(said).toContain('"lots" is not understood: write 0, a number, p, m or d');
  expect(said).toContain('"B77" is not a bin in use; there are B1, B2, B3.');
  expect(said).toContain('"0 B1" says that nothing was offered, and more');
  expect(said).toContain('"4" does not say from which bin');
  expect(formOf(html)).toMatchObject(Object.fromEntries(Object.entries(cells).map(([k, v]) => [k, [v]])));
  expect(await home.acts()).toBe(acts);
});

test('a blank sheet keyed in records whoever has something written, with what became of it', async () => {
  const home = await sevenAtTable();
  home.room.pass(1);
  const sheet = formOf(await home.see(`/tonight/key-in?day=${DAY}&who=all`));
  expect(sheet.animal).toContain('A7');
  await home.send('/tonight/key-in', {
    ...sheet,
    animal: ['A7', 'A1'],
    'cell:A7': '2 B2 r',
    'cell:A1': 's',
  });
  const animals = new Map((await loadSnapshot(home.room)).animals.map((animal) => [animal.code, animal]));
  expect(animals.get('A7')).toMatchObject({ lastOffered: 20_000, lastOutcome: 'refused' });
  expect(animals.get('A1')).toMatchObject({ lastOffered: 20_000, lastOutcome: 'part-taken' });
  expect(animals.get('A3')?.lastOffered).toBe(19_986);
  expect(words(await home.see('/morning'))).toContain('Every meal is accounted for');
});

test('an evening that cannot be keyed in is said beside its field', async () => {
  const home = await sevenAtTable();
  const tomorrow = await home.app.request('/tonight/key-in?day=2024-10-05');
  expect(tomorrow.status).toBe(422);
  expect(words(await tomorrow.text())).toContain('"2024-10-05" is after today (2024-10-04).');
});
