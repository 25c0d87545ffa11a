/** The pages of orders: from a new order to a box that came, and what is said of it. */
import { expect, test } from 'vitest';
import { cancelOrder, editSupplier, orderLate, restBin } from '../../../src/actions/index.ts';
import { rowsOf } from '../../../src/store/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

/** Monday's parcel, ordered on Friday; it comes on Wednesday. */
const ordered = (over: Record<string, string> = {}) => ({
  supplier: 'S1',
  placedDay: '2024-10-04',
  sentDay: '2024-10-07',
  'packs-F1': '2',
  'into-F1': 'B2',
  ...over,
});
const place = async ({ send }: Home, over: Record<string, string> = {}) => send('/orders/new', ordered(over));
const cameWith = (over: Record<string, string> = {}) => ({
  day: 'today',
  'alive-D2': '',
  'dead-D2': '0',
  ...over,
});
const heading = (markup: string) => /<h1>(.*?)<\/h1>/s.exec(markup)?.[1];

test('a new order is written in two steps, and stands under Orders with what it costs', async () => {
  const home = await filledHome();
  expect(await home.see('/orders/new')).toContain('href="/orders/new?supplier=S1"');
  const form = await home.see('/orders/new?supplier=S1');
  expect(form).toContain('Here on Wed 9 Oct: order by Sun 6 Oct, 12:00');
  expect(form).toContain('€6.00 a pack, €5.00 from 5');
  const answer = await place(home);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/orders']);
  const page = await home.see('/orders');
  expect(heading(page)).toBe('A parcel from Grille &amp; Co comes on Wednesday 9 October, 1 more after it');
  expect(page).toContain('500 house crickets, 11–15 mm, for Large box, 2 packs, €12.00');
  expect(page).toContain('€16.90, €4.90 of it postage');
  expect(await home.see('/larder')).toContain('See to the order');
});

test('a line is proposed for the bin nearest in size, else for a new one', async () => {
  const home = await filledHome();
  expect(await home.see('/orders/new?supplier=S1')).toContain('<option value="B2" selected="">');
  good(await restBin(home.room, { bin: 'B2', days: 9 }));
  expect(await home.see('/orders/new?supplier=S1')).toContain('<option value="new:R1" selected="">');
});

test('a delivery of which no bin is said goes into the one nearest in size', async () => {
  const home = await filledHome();
  const crickets = { heads: '50', size: 'acheta-domesticus|1/2 in', day: '2024-10-09' };
  expect((await home.send('/deliveries', { ...crickets, bin: '' })).status).toBe(303);
  const [, last] = await home.room.store.ask(rowsOf('delivery'));
  expect(last).toMatchObject({ heads: 50, bin: 'B2' });
  const roaches = { ...crickets, size: 'blaptica-dubia|large', bin: '' };
  const refused = await home.send('/deliveries', roaches);
  expect(await refused.text()).toContain('No bin holds dubia roaches of about that size');
});

test('what is typed is added up, with what is missing to free postage and to the least order', async () => {
  const home = await filledHome();
  good(await editSupplier(home.room, { supplier: 'S1', minimum: 15, postageFreeFrom: 16 }));
  const form = await home.see('/orders/new?supplier=S1');
  expect(form).toMatch(/data-hx-get="\/orders\/new\/total"[^>]*><\/div>/);
  const total = async (packs: string) =>
    words(await home.see(`/orders/new/total?supplier=S1&formId=x&packs-F1=${packs}`));
  expect(await total('2')).toBe(
    '€12.00 of goods and €4.90 postage: €16.90 €3.00 under the least order. €4.00 more and the postage is free.',
  );
  expect(await total('3')).toBe('€18.00');
  expect(await total('5')).toBe('€25.00');
  expect(await total('')).toBe('');
  expect(await total('half')).toBe('');
  expect(await home.see('/orders/new/total?supplier=S9')).toBe('');
});

test('an order into a new bin makes it', async () => {
  const home = await filledHome();
  await place(home, { 'into-F1': 'new:R1' });
  const bins = await home.room.store.ask(rowsOf('bin'));
  expect(bins.at(-1)).toMatchObject({ code: 'B4', name: 'House crickets (1/2 in)', origin: 'Grille & Co' });
});

test('what is wrong stands beside the field of its offer, and what was typed stays', async () => {
  const home = await filledHome();
  const refused = await place(home, { 'packs-F1': '1.5' });
  expect(refused.status).toBe(422);
  const page = await refused.text();
  expect(page).toContain('&quot;1.5&quot; is not a whole number of packs');
  expect(page).toContain('value="1.5"');
  expect(await (await place(home, { 'packs-F1': '' })).text()).toContain('An order needs a line');
  good(await editSupplier(home.room, { supplier: 'S1', minimum: 20 }));
  expect(await (await place(home)).text()).toContain('€12.00 of goods is €8.00 short of the least order');
  expect(await (await place(home, { sentDay: '2024-10-11' })).text()).toContain('sends on Mondays');
});

test('a late order says so first, can be expected on another day, and tells who runs out', async () => {
  const home = await filledHome();
  await place(home);
  home.room.pass(6);
  const page = await home.see('/orders');
  expect(heading(page)).toMatch(/late/);
  expect(page).toMatch(/First to run out are|Nobody runs out before it is here/);
  const answer = await home.send('/orders/O1/late', { day: '2024-10-14' });
  expect(answer.status).toBe(303);
  expect(await home.see('/orders')).toContain('It was due on Wed 9 Oct: 5 days late.');
  const wrong = await home.send('/orders/O1/late', { day: '2024-10-01' });
  expect(await wrong.text()).toContain('has passed; say when it comes now.');
});

test('an order that is not coming is gone, and can be brought back', async () => {
  const home = await filledHome();
  await place(home);
  await home.send('/orders/O1/cancelled', {});
  expect(await home.see('/orders')).not.toContain('A parcel from');
  expect(await home.see('/gone')).toContain('The order from Grille &amp; Co');
  await home.send('/gone/back', { what: 'purchase', code: 'O1' });
  expect(await home.see('/orders')).toContain('A parcel from');
});

test('a box is taken in whole; one that fell short tells who cannot wait and whether to order again', async () => {
  const home = await filledHome();
  good(await editSupplier(home.room, { supplier: 'S1', claimHours: 24 }));
  await place(home);
  home.room.pass(5);
  const came = cameWith({
    at: '14:30',
    'alive-D2': '40',
    'dead-D2': '300',
    extraSize: 'acheta-domesticus|1/4 in',
    extraAlive: '20',
    extraInto: 'B1',
  });
  const answer = await home.send('/orders/O1/came', came);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/orders']);
  const page = await home.see('/orders');
  expect(page).toContain('was not as ordered: who cannot wait is being worked out');
  expect(page).toContain('by 14:30 on Thursday 10 October');
  expect(page).toContain('300 seemed dead for Large box: look again');
  expect(page).toContain('40 house crickets alive of 500 ordered');
  expect(page).toContain('20 house crickets alive that nobody had ordered');
  const whole = await home.see('/orders?wait=1');
  expect(whole).toMatch(/cannot wait|everybody can wait/);
  expect(await home.see('/orders/O1/box')).toMatch(/^<section class="after-crash"/);
  await home.send('/deliveries/D2/again', { dead: '20' });
  expect(await home.see('/orders')).toContain('320 house crickets alive of 500 ordered');
});

test('a box with dead prey is told of for a week, though a good one comes on the same day or the next', async () => {
  const home = await filledHome();
  good(await editSupplier(home.room, { supplier: 'S1', claimHours: 48 }));
  await place(home);
  await place(home);
  home.room.pass(5);
  await home.send('/orders/O1/came', cameWith({ at: '10:00', 'alive-D2': '400', 'dead-D2': '100' }));
  home.room.pass(1);
  const good500 = Object.fromEntries(
    Object.entries(cameWith({ at: '10:00' })).map(([name, value]) => [name.replace('D2', 'D3'), value]),
  );
  const second = await home.send('/orders/O2/came', { ...good500, 'alive-D3': '500', 'dead-D3': '0' });
  expect(second.status).toBe(303);
  const page = await home.see('/orders');
  expect(page).toContain('action="/deliveries/D2/again"');
  expect(page).toContain('by 10:00');
  expect(page).not.toContain('/deliveries/D3/again');
  expect(await home.see('/orders/O2/box')).toBe('');
  home.room.pass(8);
  expect(await home.see('/orders')).not.toContain('id="box-O1"');
});

test('a box may be counted in part or weighed, and half of a sample is refused beside it', async () => {
  const home = await filledHome();
  await place(home);
  home.room.pass(5);
  const half = await home.send(
    '/orders/O1/came',
    cameWith({ 'sampleHeads-D2': '20', 'sampleMass-D2': '4 g' }),
  );
  expect(half.status).toBe(422);
  expect(await half.text()).toContain('Of a sample three are needed');
  const odd = await home.send('/orders/O1/came', cameWith({ 'part-D2': '20', 'share-D2': '400' }));
  expect(await odd.text()).toContain('&quot;400&quot; is no part of a box');
  const sample = { 'sampleHeads-D2': '20', 'sampleMass-D2': '4 g', 'allMass-D2': '98 g' };
  await home.send('/orders/O1/came', cameWith(sample));
  expect(await home.see('/orders')).toMatch(
    /490 house crickets alive of 500 ordered, by a sample, give or take \d+/,
  );
});

test('a box that came before it was sent is refused beside its day', async () => {
  const home = await filledHome();
  await place(home);
  home.room.pass(5);
  const refused = await home.send('/orders/O1/came', cameWith({ day: '2024-10-07' }));
  expect(refused.status).toBe(422);
  const page = await refused.text();
  expect(page).toContain(
    '&quot;2024-10-07&quot; is too early: the parcel from “Grille &amp; Co” leaves on Mon 7 Oct.',
  );
  expect(page).toContain('id="came-O1-day-problem"');
  expect((await home.send('/orders/O1/came', cameWith({ day: '2024-10-08' }))).status).toBe(303);
});

test('what was fetched from a shop, or is here on the day it is sent, may come on that very day', async () => {
  const home = await filledHome();
  good(await editSupplier(home.room, { supplier: 'S1', kind: 'shop', transitDays: 0, postageFlat: 0 }));
  await place(home);
  home.room.pass(3);
  const early = await home.send('/orders/O1/came', cameWith({ day: '2024-10-06' }));
  expect(await early.text()).toContain('it is fetched from “Grille &amp; Co” on Mon 7 Oct');
  expect((await home.send('/orders/O1/came', cameWith())).status).toBe(303);
});

test('what nobody ordered is told whole or refused beside what is missing', async () => {
  const home = await filledHome();
  await place(home);
  home.room.pass(5);
  const extra = async (over: Record<string, string>) =>
    (await home.send('/orders/O1/came', cameWith(over))).text();
  const said = 'Say what it was; where nothing else was in the box';
  for (const half of [{ extraDead: '4' }, { extraInto: 'B1' }, { extraAlive: '4' }]) {
    const page = await extra(half);
    expect(page).toContain(said);
    expect(page).toContain('id="came-O1-extraSize-problem"');
  }
  const size = { extraSize: 'acheta-domesticus|1/4 in' };
  expect(await extra(size)).toContain('Say how many there were, alive or dead.');
  expect((await home.send('/orders/O1/came', cameWith({ extraDead: '0' }))).status).toBe(303);
});

test('what each supplier’s boxes say stands beside what is usual', async () => {
  const home = await filledHome();
  await place(home);
  home.room.pass(7);
  await home.send('/orders/O1/came', cameWith({ 'alive-D2': '400', 'dead-D2': '100', warmed: 'on' }));
  const page = await home.see('/orders');
  expect(page).toContain('What their boxes say');
  // (4 x 0.0115 + 0.2) / 5 = 4.92 %; two days late of beta(1 + 2, 9 + 1).
  expect(page).toMatch(/5 % \(.*; usual 1 %\)/);
  expect(page).toMatch(/23 % \(.*; usual 10 %\)/);
});

test('orders are changed from elsewhere without the page falling over', async () => {
  const home = await filledHome();
  await place(home);
  good(await orderLate(home.room, { purchase: 'O1', day: home.room.date(9) }));
  good(await cancelOrder(home.room, { purchase: 'O1' }));
  const answer = await home.send('/orders/O1/came', cameWith());
  expect([answer.status, await answer.text()]).toEqual([
    422,
    expect.stringContaining('was cancelled already'),
  ]);
});
