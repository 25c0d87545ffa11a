/** The bulk order over the door: the answer in words with its numbers, what is asked wrongly, and the way to the order form. */
import { expect, test } from 'vitest';
import { addAnimal, addOffer, closeOffer, editSupplier } from '../../../src/actions/index.ts';
import { emptyHome, filledHome, type Home } from '../../support/house.ts';
import { insides } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const plain = (html: string) => html.replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** Sixty spiders that eat the crickets on offer. */
async function hungryHome(): Promise<Home> {
  const home = await filledHome();
  good(
    await addAnimal(home.room, {
      name: 'Sixty',
      kind: 'brachypelma-hamorii',
      room: 'R1',
      count: 60,
      gaugeMm: 45,
      lastTaken: home.room.date(-8),
    }),
  );
  return home;
}

test('asked first it is worked out for the page that is there; waited for it answers in words', async () => {
  const { see } = await hungryHome();
  const first = plain(await see('/bulk?offer=F1&weeks=8'));
  expect(first).toContain('Working it out');
  expect(first).toContain('data-hx-get="/bulk/answer?offer=F1&weeks=8"');
  expect(first).toContain('href="/bulk?offer=F1&weeks=8&wait=1"');
  const html = plain(await see('/bulk?offer=F1&weeks=8&wait=1'));
  expect(insides(html, 'h1')[0]).toMatch(
    /^\d+ packs? of house crickets \(1\/2 in\): each one that is eaten costs €\d/,
  );
  for (const words of ['What becomes of the box', 'The best count at each price', 'degrees cooler'])
    expect(html).toContain(words);
  expect(html).toMatch(/href="\/orders\/new\?supplier=S1&sent=\d{4}-\d\d-\d\d&offer\.F1=\d+"/);
});

test('the answer is kept: the page has it at once from then on, and so has the part alone', async () => {
  const { see } = await hungryHome();
  const part = await see('/bulk/answer?offer=F1&weeks=8');
  expect(part).toMatch(/^<section class="bulk-answer"/);
  expect(await see('/bulk?offer=F1&weeks=8')).toContain(insides(part, 'h1')[0]!);
});

test('the button leads to the order form with the packs filled in', async () => {
  const { see } = await hungryHome();
  const html = plain(await see('/bulk?offer=F1&weeks=8&wait=1'));
  const [, to = '', packs = ''] = /href="(\/orders\/new\?[^"]*offer\.F1=(\d+))"/.exec(html) ?? [];
  expect(plain(await see(to))).toMatch(new RegExp(`name="packs-F1"[^>]*value="${packs}"`));
});

test('an offer that is closed or never was, and a wrong number of weeks, are told beside their fields', async () => {
  const { app, room, see } = await filledHome();
  expect((await app.request('/bulk?offer=F9')).status).toBe(422);
  expect(plain(await see('/bulk?offer=F9'))).toContain('"F9" is no offer written down here; choose one from');
  const weeks = plain(await see('/bulk?offer=F1&weeks=a+year'));
  expect(weeks).toContain('"a year" is not a number of weeks from 4 to 26.');
  expect(weeks).toContain('value="a year"');
  const offer = { supplier: 'S1', species: 'acheta-domesticus', fromMm: 4, toMm: 6, packHeads: 100 };
  const { reply } = good(await addOffer(room, { ...offer, prices: [{ fromPacks: 1, pack: 4 }] }));
  good(await closeOffer(room, { offer: reply.offer }));
  expect(plain(await see(`/bulk?offer=${reply.offer}`))).toContain('is an offer that is closed');
});

test('what it is reckoned with is told: the keeper’s own word, what boxes taught, or what is usual', async () => {
  const home = await hungryHome();
  const sources = async () =>
    plain(await home.see('/bulk?offer=F1&weeks=8&wait=1')).split('Where the numbers come from')[1]!;
  expect(await sources()).toMatch(/Dead on arrival.*published/s);
  const sent = {
    supplier: 'S1',
    placedDay: '2024-10-04',
    sentDay: '2024-10-07',
    'packs-F1': '2',
    'into-F1': 'B2',
  };
  await home.send('/orders/new', sent);
  home.room.pass(5);
  await home.send('/orders/O1/came', { day: 'today', 'alive-D2': '350', 'dead-D2': '150' });
  expect(await sources()).toMatch(/Dead on arrival.*learned from 1 box of this supplier/s);
  good(await editSupplier(home.room, { supplier: 'S1', lossShare: 0.04 }));
  expect(await sources()).toMatch(/Dead on arrival.*4.%.*as you wrote it down/s);
});

test('where nobody eats of it, or it cannot come, a sentence says so', async () => {
  const { see, room } = await filledHome();
  const offer = { supplier: 'S1', species: 'tenebrio-molitor', fromMm: 15, toMm: 20, packHeads: 100 };
  const { reply } = good(await addOffer(room, { ...offer, prices: [{ fromPacks: 1, pack: 4 }] }));
  expect(plain(await see(`/bulk?offer=${reply.offer}&weeks=4&wait=1`))).toContain(
    'Nobody here eats mealworms',
  );
  good(await editSupplier(room, { supplier: 'S1', addHoliday: { from: room.date(0), to: room.date(60) } }));
  expect(plain(await see('/bulk?offer=F1&weeks=4&wait=1'))).toContain(
    'Grille & Co sends nothing that comes within 4 weeks',
  );
});

test('it is found from suppliers, orders and more, and says what to do where nothing is on offer', async () => {
  const { see } = await filledHome();
  for (const from of ['/suppliers', '/orders', '/more']) expect(await see(from)).toContain('href="/bulk"');
  expect(await see('/suppliers')).toContain('href="/bulk?offer=F1"');
  const bare = await (await emptyHome()).see('/bulk');
  expect(bare).toContain('Nothing on offer is written down yet.');
});
