/** Which evening is written down, what it used, and what happened meanwhile: back-dating, two people, deaths, doubts. */
import { expect, test } from 'vitest';
import {
  answerHere,
  loadSnapshot,
  recordDied,
  recordEvening,
  recordMorning,
  recordPremoult,
} from '../../../src/actions/index.ts';
import { createApp } from '../../../src/web/index.ts';
import { mountPages } from '../../../src/web/pages/index.ts';
import { roundly } from '../../../views/format.ts';
import { filledHome } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';
import { animalOf, DAY, eventsOf, fiveAtTable, rowsIn } from '../../support/round-home.ts';
import { sheetIn } from '../../support/round-sheet.ts';
import { good, TODAY } from '../../support/store-at.ts';

test('an evening before is worked out from the record as it stood, and written on its own day', async () => {
  const home = await fiveAtTable();
  home.room.pass(2);
  good(await recordPremoult(home.room, { animal: 'A3' }));
  const tonight = await home.see('/tonight');
  expect(rowsIn(tonight)).not.toContain('A3');
  expect(tonight).toContain('href="/tonight?day=2024-10-05"');
  const then = await home.see(`/tonight?day=${DAY}`);
  expect(words(then)).toContain('You are writing down Friday 4 October, 2 days ago, not tonight.');
  expect(rowsIn(then)).toContain('A3');
  const answer = await home.send('/tonight', { ...sheetIn(then), notFed: ['A1'] });
  expect(answer.headers.get('location')).toBe(`/tonight?day=${DAY}`);
  expect(await animalOf(home, 'A4')).toMatchObject({ lastOffered: TODAY });
  expect(words(await home.see(`/tonight?day=${DAY}`))).toContain(
    'Everybody due that evening is written down',
  );
});

const NO_EVENINGS = [
  ['2024-10-05', '"2024-10-05" is after today (2024-10-04).'],
  ['2024-08-04', '"2024-08-04" is more than 60 days ago'],
  ['soon', '"soon" is not a date'],
] as const;

test.each(NO_EVENINGS)(
  'the evening %s is refused with a sentence, asked for or sent',
  async (day, sentence) => {
    const home = await filledHome();
    const acts = await home.acts();
    const asked = await home.app.request(`/tonight?day=${day}`);
    expect(asked.status).toBe(422);
    expect(words(await asked.text())).toContain(sentence);
    const sent = await home.send('/tonight', { ...sheetIn(await home.see('/tonight')), day });
    expect([sent.status, await home.acts()]).toEqual([422, acts]);
    expect(words(await sent.text())).toContain(sentence);
  },
);

test('after midnight the page says whose evening it still is', async () => {
  const { room } = await filledHome();
  const night = { ...room, clock: () => ({ ...room.clock(), smallHours: true }) };
  const app = createApp(night, {
    root: new URL('../../..', import.meta.url).pathname,
    locked: false,
    hostNames: [],
    pages: { failure: ({ sentence }) => sentence, login: () => 'login' },
    log: () => undefined,
    mount: (behind) =>
      mountPages(behind, {
        context: night,
        answering: answerHere,
        underWay: null as never,
        furnish: null as never,
        canLogOut: false,
      }),
  });
  const page = words(await (await app.request('/tonight')).text());
  expect(page).toContain('After midnight: until 04:00 this is still the evening of Friday 4 October');
});

test('what two people said of one animal is shown with both values and the way to change it', async () => {
  const home = await fiveAtTable();
  const sheet = sheetIn(await home.see('/tonight'));
  await home.send('/tonight', { ...sheet, formId: 'his.round', shelf: 'A2' });
  home.room.passSeconds(720);
  const hers = { ...sheet, formId: 'hers.round', premoult: 'A1', notFed: 'A3' };
  const answer = await home.send('/tonight', hers);
  expect(answer.status).toBe(303);
  const page = await home.see(answer.headers.get('location')!);
  expect(words(page)).toMatch(
    /Ash: you said “premoult”, the record says “offered \d house crickets from Large box” and stands\./,
  );
  expect(words(page)).toContain('Round of Fri 4 Oct: 1 fed, 0 not, 12 minutes ago');
  expect(page).toContain('href="/animals/A1"');
  expect(page).toMatch(/action="\/undo\/\d+"><input type="hidden" name="formId"/);
  expect(await animalOf(home, 'A1')).toMatchObject({ lastOffered: TODAY, premoultSeen: null });
  expect(await animalOf(home, 'A3')).toMatchObject({ lastOffered: TODAY - 14 });
  expect(await animalOf(home, 'A4')).toMatchObject({ lastOffered: TODAY });
});

test('two counts of one meal are both shown', async () => {
  const home = await fiveAtTable();
  const sheet = sheetIn(await home.see('/tonight'));
  await home.send('/tonight', { ...sheet, formId: 'his.round' });
  const answer = await home.send('/tonight', { ...sheet, formId: 'hers.round', 'heads:A1': '1' });
  expect(words(await home.see(answer.headers.get('location')!))).toMatch(
    /Ash: you said “offered 1 house cricket from Large box”, the record says “offered [2-9] house crickets/,
  );
});

test('a meal for an animal that died meanwhile is told, the other rows stay as marked and go through', async () => {
  const home = await fiveAtTable();
  const sheet = { ...sheetIn(await home.see('/tonight')), notFed: 'A4', moulted: 'A2' };
  good(await recordDied(home.room, { animal: 'A1' }));
  const acts = await home.acts();
  const refused = await home.send('/tonight', sheet);
  const html = await refused.text();
  expect([refused.status, await home.acts()]).toEqual([422, acts]);
  expect(words(html)).toContain('Ash (died on Fri 4 Oct) no longer lives here and cannot be fed.');
  expect(sheetIn(html)).toMatchObject({ notFed: 'A4', moulted: 'A2' });
  expect(rowsIn(html)).not.toContain('A1');
  expect((await home.send('/tonight', sheetIn(html))).status).toBe(303);
  expect((await loadSnapshot(home.room)).animals.find(({ code }) => code === 'A2')?.lastMoult?.found).toBe(
    TODAY,
  );
});

test('what the evening used and what the bins hold now is told, that evening and later', async () => {
  const home = await fiveAtTable();
  await home.send('/tonight', sheetIn(await home.see('/tonight')));
  const heads = (await eventsOf(home, 'B2')).reduce((sum, event) => sum + event.heads, 0);
  for (const _ of ['at once', 'later']) {
    const page = words(await home.see('/tonight'));
    expect(page).toMatch(/Used \d+ house crickets/);
    expect(page).toContain(`Large box now holds about ${roundly(80 - heads)}.`);
    home.room.passSeconds(3600);
  }
});

test('a bin with fewer heads than were fed is doubted: the meals are kept and a count is asked for', async () => {
  const home = await filledHome();
  const sheet = sheetIn(await home.see('/tonight'));
  expect((await home.send('/tonight', { ...sheet, 'heads:A1': '120' })).status).toBe(303);
  expect(await eventsOf(home, 'B2')).toMatchObject([{ heads: 120 }]);
  const page = await home.see('/tonight');
  expect(words(page)).toContain(
    'Fed 120 out of Large box, which was thought to hold about 80. The meals are kept; count Large box.',
  );
  expect(page).toContain('<a href="/larder/B2">count Large box</a>');
  await home.send('/larder/B2/count', { heads: '40', size: '', day: DAY });
  expect(words(await home.see('/tonight'))).not.toContain('thought to hold');
});

test('an animal that refused again and again is due with a word and the way to look at it', async () => {
  const home = await filledHome();
  const row = { animal: 'A1', outcome: 'offered' as const, bin: 'B2', heads: 2, fromMm: 10, toMm: 14 };
  for (const _ of ['first', 'second']) {
    good(await recordEvening(home.room, { rows: [row] }));
    home.room.pass(1);
    good(await recordMorning(home.room, { exceptions: [{ animal: 'A1', outcome: 'refused' }] }));
    home.room.pass(13);
  }
  const page = await home.see('/tonight');
  expect(rowsIn(page)).toContain('A1');
  expect(words(page)).toContain('Refused twice in a row: premoult, or something wrong?');
  expect(page).toContain('<a href="/animals/A1">Open Ash</a>');
});
