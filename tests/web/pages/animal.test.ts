/** One animal's page on a real room: the record told, acts of one tap, and what is refused with the words typed. */
import { describe, expect, test } from 'vitest';
import {
  addAnimal,
  recordDied,
  recordEvening,
  recordMeasure,
  recordMorning,
  recordMoult,
} from '../../../src/actions/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { attributes, insides, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const TODAY = '2024-10-04';

/** Lives some weeks: Ash is offered three crickets every seventh evening, and refuses the last `refused` of them. */
async function fed(home: Home, weeks: number, refused = 0): Promise<void> {
  const { room } = home;
  for (let week = 0; week < weeks; week++) {
    const row = { animal: 'A1', outcome: 'offered' as const, bin: 'B2', heads: 3, fromMm: 10, toMm: 14 };
    good(await recordEvening(room, { rows: [row] }));
    room.pass(1);
    const exceptions = week >= weeks - refused ? [{ animal: 'A1', outcome: 'refused' as const }] : [];
    good(await recordMorning(room, { exceptions }));
    room.pass(6);
  }
}

describe('a frog', () => {
  test('is asked nothing about a moult, on its page and in the round', async () => {
    const home = await filledHome();
    const frog = { name: 'Puddle', kind: 'dendrobates-tinctorius', gaugeMm: 40, room: 'R1' };
    const { animal } = good(await addAnimal(home.room, frog)).reply;
    const said = words(await home.see(`/animals/${animal}`));
    expect(said).toContain('It grows without moulting; it takes prey of');
    expect(said).not.toContain('Moult found');
    expect(said).not.toContain('In premoult');
    const round = await home.see('/tonight');
    expect(round).toContain(`name="died" value="${animal}"`);
    expect(round).not.toContain(`name="moulted" value="${animal}"`);
    expect(round).toContain('name="moulted" value="A1"');
  });
});

describe('the page', () => {
  test('calls one that died by its name where that can be undone', async () => {
    const home = await filledHome();
    good(await recordDied(home.room, { animal: 'A1' }));
    expect(words(await home.see('/animals'))).toContain('Ash died');
    expect(words(await home.see('/settings'))).toContain('Ash died. Undo');
  });

  test('says when the next moult comes, from the last', async () => {
    const home = await filledHome();
    expect(words(await home.see('/animals/A1'))).toContain(
      'No moult is on record: the next may come any time',
    );
    good(await recordMoult(home.room, { animal: 'A1' }));
    const said = words(await home.see('/animals/A1'));
    expect(said).toMatch(
      /Next moult about (early|mid|late) [A-Z][a-z]+( 2025)?; then it takes prey of \d+–\d+ mm/,
    );
    expect(said).toContain('now, since 4 Oct 2024');
  });

  test('does not foretell the moults of a group', async () => {
    const home = await filledHome();
    expect(words(await home.see('/animals/A2'))).toContain('A group, whose moults are not foretold');
  });

  test('weighs what it ate once there are three meals, and says what its refusals mean', async () => {
    const home = await filledHome();
    await fed(home, 3);
    expect(words(await home.see('/animals/A1'))).toContain('It eats about');
    const short = await filledHome();
    await fed(short, 2);
    expect(words(await short.see('/animals/A1'))).toContain('Its appetite can be told from three meals on');
    const fasting = await filledHome();
    good(await recordMoult(fasting.room, { animal: 'A1' }));
    fasting.room.pass(20);
    await fed(fasting, 4, 3);
    expect(words(await fasting.see('/animals/A1'))).toContain(
      'Three refusals in a row are unusual at this point of its cycle',
    );
  });

  test('tells an evening and its morning as one line', async () => {
    const home = await filledHome();
    await fed(home, 2, 1);
    const said = words(await home.see('/animals/A1'));
    expect(said).toContain('Offered 3 house crickets, 10–14 mm, from Large box: taken.');
    expect(said).toContain('Offered 3 house crickets, 10–14 mm, from Large box: refused.');
    expect(said).not.toContain('Ate it.');
  });

  test('goes by months, and on to older pages', async () => {
    const home = await filledHome();
    await fed(home, 60);
    const page = await home.see('/animals/A1');
    expect(insides(page, 'h3')[0]).toBe('November 2025');
    expect(attributes(page, 'href')).toContain('/animals/A1?page=2#history');
    const older = await home.see('/animals/A1?page=2');
    expect(insides(older, 'h3').at(-1)).toBe('October 2024');
    expect(attributes(older, 'href')).toContain('/animals/A1?page=1#history');
    const titles = [page, older].flatMap((each) => insides(each, 'h3'));
    expect(new Set(titles).size).toBe(titles.length);
    expect((await home.app.request('/animals/A1?page=nonsense')).status).toBe(200);
    expect(insides(await home.see('/animals/A1?page=99'), 'h3').at(-1)).toBe('October 2024');
  });

  test('draws growth once there are two sizes', async () => {
    const home = await filledHome();
    expect(await home.see('/animals/A1')).not.toContain('id="growth-head"');
    home.room.pass(100);
    good(await recordMeasure(home.room, { animal: 'A1', gaugeMm: 60 }));
    expect(words(await home.see('/animals/A1'))).toContain('From 50 mm to 60 mm in 3 months');
  });
});

describe('what is refused', () => {
  test('a moult before the last one, beside its field, with the day as typed', async () => {
    const home = await filledHome();
    home.room.pass(20);
    good(await recordMoult(home.room, { animal: 'A1', found: '2024-10-14' }));
    const answer = await home.send('/animals/A1/moulted', { found: '2024-10-10', earliest: '', gauge: '' });
    expect(answer.status).toBe(422);
    const page = await answer.text();
    expect(words(page)).toContain('"2024-10-10" is before its last moult on record, found on 14 Oct 2024.');
    expect(page).toContain('value="2024-10-10"');
  });

  test('a size smaller than before the moult, until it is said to be meant', async () => {
    const home = await filledHome();
    home.room.pass(20);
    const fields = { found: '2024-10-20', earliest: '', gauge: '3.4 cm' };
    const answer = await home.send('/animals/A1/moulted', fields);
    expect(answer.status).toBe(422);
    const page = await answer.text();
    expect(words(page)).toContain('34 mm is less than the 50 mm measured before this moult.');
    expect(page).toContain('value="3.4 cm"');
    expect(page).toContain('name="smaller"');
    expect((await home.send('/animals/A1/moulted', { ...fields, smaller: 'on' })).status).toBe(303);
    expect(words(await home.see('/animals/A1'))).toContain('Moult found: 34 mm.');
  });

  test.each([
    ['moulted', { found: TODAY, earliest: '', gauge: '55 mm' }, 'Size 55 mm'],
    ['measured', { gauge: '55 mm', day: TODAY }, 'Size 55 mm'],
    ['premoult', { day: TODAY }, `Day ${TODAY}`],
    ['died', { heads: '1', day: TODAY }, 'How many 1'],
  ])('%s of one that died: a sentence, and the words typed', async (act, fields, kept) => {
    const home = await filledHome();
    good(await recordDied(home.room, { animal: 'A1' }));
    const before = await home.acts();
    const answer = await home.send(`/animals/A1/${act}`, fields);
    expect(answer.status).toBe(422);
    const said = words(await answer.text());
    expect(said).toContain('Ash died on 4 Oct 2024 (2024-10-04)');
    expect(said).toContain(kept);
    expect(await home.acts()).toBe(before);
  });

  test('an animal that never was is not found', async () => {
    const home = await filledHome();
    expect((await home.send('/animals/A99/premoult', { day: TODAY })).status).toBe(404);
  });
});

test('that live prey must come out is said of an animal near its moult, and of no other', async () => {
  const home = await filledHome();
  const mind = 'May moult soon: take live prey out before you leave.';
  expect(await home.see('/animals/A1')).not.toContain(mind);
  await home.send('/animals/A1/premoult', { day: home.room.date(0) });
  expect(await home.see('/animals/A1')).toContain(mind);
});
