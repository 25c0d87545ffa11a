/** The history as the keeper reads it: by day, looked through, and each step undone or done again from it. */
import { expect, test } from 'vitest';
import {
  countBin,
  editAnimal,
  loadSnapshot,
  recordEvening,
  recordMoult,
  recordPremoult,
} from '../../../src/actions/index.ts';
import { roundDone } from '../../../src/store/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { insides } from '../../support/markup-words.ts';
import { good, TODAY } from '../../support/store-at.ts';

const offer = (animal: string) => ({
  animal,
  outcome: 'offered' as const,
  bin: 'B1',
  heads: 2,
  fromMm: 4,
  toMm: 6,
});
const words = (html: string): string => html.replace(/<[^>]+>/g, '|').replace(/\|+/g, '|');
/** Presses the button of this name on a page. */
async function press({ see, send }: Home, path: string, name: string): Promise<void> {
  const form = insides(await see(path), 'form').findIndex((inside) => words(inside).includes(name));
  const action = [...(await see(path)).matchAll(/<form[^>]*action="([^"]+)"/g)][form]?.[1];
  expect(action, name).toBeDefined();
  expect((await send(action!, {})).status).toBe(303);
}

test('steps stand newest first under their day, and those who are gone keep their names', async () => {
  const home = await filledHome();
  home.room.pass(1);
  await home.send('/animals/A1/died', { heads: '1', day: home.room.date(0) });
  const html = words(await home.see('/history'));
  expect(html).toMatch(
    /Today\|.*Ash died\..*Friday 4 October 2024\|.*Expect 100 house crickets.*Added Ash\./s,
  );
});

test('an evening recorded shelf by shelf is one step with one undo, in the banner too', async () => {
  const home = await filledHome();
  good(await recordEvening(home.room, { rows: [offer('A1')] }));
  good(await recordEvening(home.room, { rows: [offer('A2')] }));
  expect(words(await home.see('/larder'))).toContain('|Round of Fri 4 Oct: 2 fed, 0 not|Undo|');
  const history = words(await home.see('/history'));
  expect(history).toContain('Round of Fri 4 Oct: 2 fed, 0 not.|In 2 parts|');
  await press(home, '/larder', 'Undo|: Round of Fri 4 Oct: 2 fed, 0 not');
  expect(await home.room.store.ask(roundDone(TODAY))).toEqual([]);
  const undone = words(await home.see('/history'));
  expect(undone).toContain('Round of Fri 4 Oct: 2 fed, 0 not.| Undone.');
  await press(home, '/history', 'Do these 2 again');
  expect(await home.room.store.ask(roundDone(TODAY))).toEqual(['A1', 'A2']);
});

test('an act that newer ones rest on names them and is undone with them', async () => {
  const home = await filledHome();
  const before = (await loadSnapshot(home.room)).animals;
  good(await recordMoult(home.room, { animal: 'A1', gaugeMm: 60 }));
  good(await editAnimal(home.room, { animal: 'A1', shelf: 'B7' }));
  const html = words(await home.see('/history'));
  expect(html).toMatch(/Ash moulted\.\|1 newer act rests on it\|Changed Ash\|Undo these 2 together/);
  await press(home, '/history', 'Undo these 2 together|: Ash moulted');
  expect((await loadSnapshot(home.room)).animals).toEqual(before);
});

test('it is looked through by animal, bin, kind of act and words, which may be names', async () => {
  const home = await filledHome();
  good(await recordPremoult(home.room, { animal: 'A2' }));
  good(await countBin(home.room, { bin: 'B2', heads: 70 }));
  const found = async (asked: string) =>
    [...(await home.see(`/history?${asked}`)).matchAll(/<p>([^<]+\.)<\/p>/g)]
      .map((match) => match[1]!)
      .filter((sentence) => !sentence.startsWith('Stands here'));
  expect(await found('animal=A2')).toEqual([expect.stringContaining('Sac of five'), 'Added Sac of five.']);
  expect(await found('bin=B2')).toEqual(['Counted 70 in Large box.', 'Added bin Large box.']);
  expect(await found('group=moults')).toHaveLength(1);
  expect(await found('group=deliveries')).toEqual(['Expect 100 house crickets on Wed 9 Oct.']);
  expect(await found('q=large+counted')).toEqual(['Counted 70 in Large box.']);
  expect(await found('q=large&group=other')).toEqual([]);
  expect(words(await home.see('/history?q=nothing-such'))).toContain('Nothing on record matches this');
});

test('fifty steps are a page, and the words asked for go on to the next', async () => {
  const home = await filledHome();
  for (let heads = 0; heads < 52; heads += 1) good(await countBin(home.room, { bin: 'B1', heads }));
  const first = await home.see('/history?q=counted');
  expect(first).toContain('Counted 51 in');
  expect(first).not.toContain('Counted 1 in');
  const older = /href="(\/history\?[^"]+)"[^>]*>\s*Older/.exec(first)![1]!.replaceAll('&amp;', '&');
  const second = await home.see(older);
  expect(second).toContain('Counted 1 in');
  expect(second).not.toContain('>Older');
  expect(second).toContain('>Newer');
});

test('the last round stays on top for 30 days, whatever comes after it', async () => {
  const home = await filledHome();
  good(await recordEvening(home.room, { rows: [offer('A1')] }));
  good(await recordPremoult(home.room, { animal: 'A2' }));
  home.room.pass(30);
  expect(words(await home.see('/history'))).toMatch(/Last done in one go\|.*Round of Fri 4 Oct.*Undo/s);
  home.room.pass(1);
  expect(words(await home.see('/history'))).not.toContain('Last done in one go');
});

test('the first pages after an act show its undo on top, later ones at the foot, for 30 days', async () => {
  const home = await filledHome();
  good(await recordPremoult(home.room, { animal: 'A2' }));
  let cookie = '';
  const look = async () => {
    const answer = await home.app.request('/larder', { headers: { cookie } });
    const last = answer.headers.getSetCookie().find((each) => each.startsWith('preylarder_last='));
    cookie = last?.split(';')[0] ?? cookie;
    const html = await answer.text();
    return /class="(banner )?undo"/.exec(html)?.[0];
  };
  expect([await look(), await look(), await look()]).toEqual([
    'class="banner undo"',
    'class="banner undo"',
    'class="undo"',
  ]);
  good(await recordPremoult(home.room, { animal: 'A1' }));
  expect(await look()).toBe('class="banner undo"');
  cookie = '';
  home.room.passSeconds(16 * 60);
  expect(await look()).toBe('class="undo"');
  home.room.pass(29);
  expect(await look()).toBe('class="undo"');
  home.room.pass(2);
  expect(await look()).toBeUndefined();
});
