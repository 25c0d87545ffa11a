/** The plan's page over the door: the plan asked for, wishes in its address, what contradicts, and the last good plan meanwhile. */
import { expect, test } from 'vitest';
import { addRoom, askPlan, loadSnapshot, placeOrders, undo } from '../../../src/actions/index.ts';
import type { PlanAnswer, PlanLine, PlanQuestion } from '../../../src/husbandry/plan/index.ts';
import { ok } from '../../../src/husbandry/result.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { sellsPrey } from '../../support/sellers.ts';
import { good } from '../../support/store-at.ts';
import { plan } from '../../support/view-plan.ts';

const TWELVE_WEEKS: PlanQuestion = { weeks: 12, wishes: [], supposed: [] };
const plain = (html: string) =>
  html.replaceAll('\u00a0', ' ').replaceAll('&quot;', '"').replaceAll('&amp;', '&').replaceAll('&#39;', "'");

/** A home whose plan of twelve weeks is the invented one, made of the room as it is. */
async function plannedHome(change: Partial<PlanAnswer> = {}): Promise<Home> {
  const home = await filledHome();
  const { today } = home.room.clock();
  const made = { ...plan, ...change, revision: await home.acts(), day: today };
  good(await askPlan(home.room, TWELVE_WEEKS, { answering: async () => ok(made as never) }));
  return home;
}

test('before the first plan the page says what it will be, asks how far it is, and can be stopped', async () => {
  const { see } = await filledHome();
  const html = plain(await see('/plan'));
  expect(html).toContain('data-hx-get="/plan/progress?weeks=12"');
  expect(html).toContain('Waiting for its turn …');
  expect(html).toContain('href="/plan?weeks=12&wait=1"');
  expect(html).toContain('<form method="post" action="/plan/cancel"');
});

test('news of a plan that is there are the plan itself, in the place of the whole part', async () => {
  const { app } = await filledHome();
  const answer = await app.request('/plan/progress?weeks=12');
  expect(answer.headers.get('hx-retarget')).toBe('#plan');
  const part = await answer.text();
  expect(part).toMatch(/^<section id="plan"/);
  expect(part).not.toContain('data-hx-trigger="load"');
});

test('a plan that is kept is told at once, with the way to do, pin or forbid each line', async () => {
  const { see } = await plannedHome();
  const html = plain(await see('/plan'));
  expect(html).toMatch(/<h1>Nothing to order this week; the next order is by Tue 24 Nov/);
  expect(html).toContain('Without it: 12 to 19 missed meals and €9.40 saved.');
  expect(html).toContain('pin=order%3AO2%402026-11-25%3A2');
  expect(html).toContain('forbid=start%3Ahydei%402026-11-23');
  expect(html).not.toContain('forbid=harvest');
  expect(html).toContain('pin=rest%3AB2%3A2');
  expect(html).toContain('Leave it alone until Sun 6 Dec');
  expect(html).toContain('forbid=cull%3AB2%3Amales');
  expect(html).toContain('proven to within 0.8 %');
  expect(html).not.toContain('data-hx-trigger="load"');
});

test('when the room has changed the last good plan stays and says how old it is', async () => {
  const { see, room } = await plannedHome();
  room.pass(2);
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  const html = await see('/plan');
  expect(html).toContain('This is the plan made on Friday 4 October, before your last change.');
  expect(html).toContain('The plan is being made');
  expect(html).toContain('What to do, and why');
});

test('a plan that was stopped is not begun again by itself, and the last good one stays', async () => {
  const { see, send, room } = await plannedHome();
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  const sent = await send('/plan/cancel', { asked: 'weeks=12' });
  expect([sent.status, sent.headers.get('location')]).toEqual([303, '/plan?weeks=12&rest=1']);
  const html = plain(await see('/plan?weeks=12&rest=1'));
  expect(html).toContain('What to do, and why');
  expect(html).toContain('<a class="button act-here" href="/plan?weeks=12">Make it anew</a>');
  expect(html).not.toContain('data-hx-trigger="load"');
});

test('a line that is pinned and forbidden at once is named with both wishes; the last good plan stays', async () => {
  const home = await plannedHome();
  await sellsPrey(home.room.store);
  const { app } = home;
  const answer = await app.request('/plan?pin=order:F1@2024-10-07:20&forbid=order:F1@2024-10-07');
  expect(answer.status).toBe(422);
  const html = plain(await answer.text());
  expect(html).toMatch(
    /“small house crickets from Hill Farm Feeders, leaving Mon 7 Oct” is pinned at 20 packs and forbidden at once; take one of the two back\./,
  );
  expect(html).toContain('What to do, and why');
  expect(html).not.toContain('data-hx-trigger="load"');
});

test.each([
  ['weeks=40', '"40" is not a number of weeks from 4 to 26.'],
  ['weeks=a%3Cb', '"a&lt;b" is not a number of weeks from 4 to 26.'],
  [
    'pin=key:none',
    '"none" is not a number of packs, heads, cups or weeks for “key”; write a whole number from 1 on.',
  ],
  [
    'pin=key:0',
    '"0" is not a number of packs, heads, cups or weeks for “key”; write a whole number from 1 on.',
  ],
])('%s is answered with a sentence that quotes it', async (query, sentence) => {
  const { app } = await filledHome();
  const answer = await app.request(`/plan?${query}`);
  expect(answer.status).toBe(422);
  expect(plain(await answer.text())).toContain(sentence);
});

test('another amount typed beside a line becomes a pin in the address', async () => {
  const { app } = await plannedHome();
  const answer = await app.request(
    '/plan?weeks=12&pin=order:O2@2026-11-25:2&line=order:O2@2026-11-25&amount=4',
  );
  expect([answer.status, answer.headers.get('location')]).toEqual([
    303,
    '/plan?weeks=12&pin=order%3AO2%402026-11-25%3A4',
  ]);
});

test('wishes are listed in words with the way to take each back', async () => {
  const home = await plannedHome();
  await sellsPrey(home.room.store);
  const html = plain(
    await home.see('/plan?weeks=12&pin=order:F1@2024-10-07:3&forbid=start:drosophila-hydei@2024-10-06'),
  );
  expect(html).toContain('Pinned: 3 packs of small house crickets from Hill Farm Feeders, leaving Mon 7 Oct');
  expect(html).toContain('Forbidden: cups of large fruit flies on Sun 6 Oct');
  expect(html).toContain('href="/plan?weeks=12&forbid=start%3Adrosophila-hydei%402024-10-06"');
  expect(html).toContain('without your wishes');
});

test('a pin that the plan could not keep is said to be left out', async () => {
  const home = await plannedHome();
  const wishes = [{ key: 'order:O9@2024-10-07', wish: 'pin', amount: 3 }] as const;
  const made = { ...plan, revision: await home.acts(), day: home.room.clock().today };
  good(await askPlan(home.room, { ...TWELVE_WEEKS, wishes }, { answering: async () => ok(made as never) }));
  const html = await home.see('/plan?weeks=12&pin=order:O9@2024-10-07:3');
  expect(html).toContain('It cannot be had so: it is left out');
});

test('a harvest of the plan opens the bin’s own form, filled in', async () => {
  const { see } = await filledHome();
  const html = await see('/larder/B1?heads=40&sizeClass=acheta-domesticus%7Cmedium&begin=harvest');
  expect(html).toMatch(/<details class="act-form" open=""><summary>Harvested<\/summary>/);
  expect(html).toMatch(/id="harvest-heads"[^>]*value="40"/);
});

/** What the button of the page would post. */
function applyForm(html: string): Record<string, string> {
  const orders = /name="orders" value="([^"]*)"/.exec(html)?.[1];
  return { asked: 'weeks=12', orders: plain(orders ?? '') };
}

/** Today is Friday 4 October: ordered today, sent on Saturday or Monday; and one after Sunday, which is planned anew. */
async function orderingHome(): Promise<Home> {
  const home = await filledHome();
  await sellsPrey(home.room.store);
  await keepOrders(home, 3);
  return home;
}

/** Keeps a plan of so many packs of each order. */
async function keepOrders(home: Home, packs: number): Promise<void> {
  const { today } = home.room.clock();
  const order = plan.lines.find((line) => line.what === 'order')!;
  const sentOn = (sent: number, bin: string | null) =>
    ({
      ...order,
      key: `order F1 ${sent}`,
      species: 'acheta-domesticus',
      offer: 'F1',
      parcel: `S1 ${sent}`,
      packs,
      heads: packs * 100,
      actBy: sent - 1,
      sent,
      comes: sent + 2,
      bin,
    }) as PlanLine;
  const lines = [sentOn(today + 1, 'B2'), sentOn(today + 2, null), sentOn(today + 3, 'B1')];
  const revision = await home.acts();
  const made = { ...plan, lines: lines.filter(({ actBy }) => actBy !== today + 1), revision, day: today };
  good(await askPlan(home.room, TWELVE_WEEKS, { answering: async () => ok(made as never) }));
}

test('the orders of this week are placed by one button, in one step, and not those after Sunday', async () => {
  const home = await orderingHome();
  const page = await home.see('/plan');
  const shown = plain(page);
  expect(shown).toContain('300 small house crickets from Hill Farm Feeders, today');
  expect(shown).toContain('Writes 1 order down as placed');
  const before = await home.acts();
  const sent = await home.send('/plan/apply', applyForm(page));
  expect([sent.status, sent.headers.get('location')]).toEqual([303, '/orders']);
  expect(await home.acts()).toBe(before + 1);
  // The plan named B2; what comes goes where prey of about its size stands.
  const placed = (await loadSnapshot(home.room)).deliveries.at(-1)!;
  expect(placed).toMatchObject({ bin: 'B1', lot: { heads: 300 } });
  const html = await home.see('/plan');
  expect(html).toContain('Ordered from “Hill Farm Feeders”: 300 house crickets');
  expect(html).toContain('before your last change');
  expect(html).not.toContain('Apply the plan’s orders');
});

test('a plan of a room that has changed since is not applied, and the page says why', async () => {
  const home = await orderingHome();
  const page = await home.see('/plan');
  good(await addRoom(home.room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  const before = await home.acts();
  const sent = await home.send('/plan/apply', applyForm(page));
  expect(sent.status).toBe(422);
  expect(await sent.text()).toContain(
    'Something has changed since this plan was made, so nothing was ordered.',
  );
  expect(await home.acts()).toBe(before);
});

test('a plan made anew since with other orders is not applied by a page that shows the old ones', async () => {
  const home = await orderingHome();
  const page = await home.see('/plan');
  good(await addRoom(home.room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  await keepOrders(home, 5);
  const before = await home.acts();
  const sent = await home.send('/plan/apply', applyForm(page));
  expect(sent.status).toBe(422);
  expect(plain(await sent.text())).toContain('500 small house crickets');
  expect(await home.acts()).toBe(before);
  const again = await home.send('/plan/apply', applyForm(await home.see('/plan')));
  expect(again.status).toBe(303);
});

test('several orders at once are one act; if one cannot be, none is placed', async () => {
  const home = await filledHome();
  await sellsPrey(home.room.store);
  const order = (sentDay: string) => ({
    supplier: 'S1',
    sentDay,
    lines: [{ offer: 'F1', packs: 2, bin: 'B1' }],
  });
  const before = await home.acts();
  const late = await placeOrders(home.room, {
    orders: [order(home.room.date(1)), order(home.room.date(-1))],
  });
  expect(late.ok).toBe(false);
  expect(await home.acts()).toBe(before);
  const { act } = good(
    await placeOrders(home.room, { orders: [order(home.room.date(1)), order(home.room.date(3))] }),
  );
  expect((await loadSnapshot(home.room)).deliveries).toHaveLength(3);
  good(await undo(home.room, { act }));
  expect((await loadSnapshot(home.room)).deliveries).toHaveLength(1);
});

test('parcels of one act that need a new bin for the same prey share one', async () => {
  const home = await filledHome();
  await sellsPrey(home.room.store);
  const order = (days: number, name = 'Small crickets') => ({
    supplier: 'S1',
    sentDay: home.room.date(days),
    lines: [{ offer: 'F1', packs: 2, room: 'R1', name }],
  });
  const before = (await loadSnapshot(home.room)).bins.length;
  good(await placeOrders(home.room, { orders: [order(1), order(3), order(3, 'Others')] }));
  const { bins, deliveries } = await loadSnapshot(home.room);
  expect(bins.slice(before).map(({ name }) => name)).toEqual(['Small crickets', 'Others']);
  expect(deliveries.slice(1).map(({ bin }) => bin)).toEqual(['B4', 'B4', 'B5']);
});

test('a parcel of the plan opens the order form with its day and packs filled in', async () => {
  const home = await orderingHome();
  const href = /href="(\/orders\/new\?[^"]*)"/.exec(plain(await home.see('/plan')))?.[1] ?? '';
  expect(href).toContain('offer.F1=3');
  const html = await home.see(href);
  expect(html).toMatch(/name="packs-F1"[^>]*value="3"/);
  expect(html).toMatch(new RegExp(`<option value="${/sent=([\d-]+)/.exec(href)?.[1]}" selected=""`));
});
