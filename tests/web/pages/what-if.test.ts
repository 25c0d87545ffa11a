/** What ifs over the door: composed by forms, held by the address, compared with the plan, and nothing applied. */
import { expect, test } from 'vitest';
import { addRoom, askPlan } from '../../../src/actions/index.ts';
import type { PlanAnswer, Supposed } from '../../../src/husbandry/plan/index.ts';
import { ok } from '../../../src/husbandry/result.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { good } from '../../support/store-at.ts';
import { plan } from '../../support/view-plan.ts';

const plain = (html: string) =>
  html.replaceAll('&quot;', '"').replaceAll('&amp;', '&').replaceAll('&#39;', "'");
const WARMER: Supposed = { what: 'warmer', degrees: 2 };

async function keepPlan(home: Home, supposed: readonly Supposed[], change: Partial<PlanAnswer> = {}) {
  const made = { ...plan, ...change, revision: await home.acts(), day: home.room.clock().today };
  const question = { weeks: 12, wishes: [], supposed, explained: supposed.length === 0 };
  good(await askPlan(home.room, question, { answering: async () => ok(made as never) }));
}

const dearer = { ...plan.whole, cents: { ...plan.whole.cents, total: plan.whole.cents.total + 1240 } };

test('what is typed into a form becomes an address that can be kept', async () => {
  const { app } = await filledHome();
  const next = async (query: string) => {
    const answer = await app.request(`/plan/what-if?${query}`);
    expect(answer.status).toBe(303);
    return decodeURIComponent(answer.headers.get('location') ?? '');
  };
  expect(await next('weeks=12&add=warmer&degrees=2,5')).toBe('/plan/what-if?weeks=12&if=warmer:2.5');
  expect(await next('weeks=8&if=warmer:2&add=away&from=2024-10-10&to=2024-10-20&with=')).toBe(
    '/plan/what-if?weeks=8&if=warmer:2&if=away:2024-10-10:2024-10-20',
  );
  expect(await next('weeks=8&if=warmer:2&add=dies&bin=B1&with=0')).toBe(
    '/plan/what-if?weeks=8&if=warmer:2,dies:B1',
  );
});

test.each([
  ['add=warmer&degrees=40', '"40" is not a number of degrees from -15 to 15, such as 2.'],
  ['add=warmer&degrees=0', '"0" degrees would change nothing; write how much warmer, such as 2.'],
  [
    'add=away&from=2024-10-20&to=2024-10-10',
    '"2024-10-20 to 2024-10-10" runs backwards; the earlier day comes first.',
  ],
  [
    'add=sac&kind=brachypelma-hamorii&young=400&day=2020-01-01',
    '"2020-01-01" is over; give a day that is still to come.',
  ],
  ['add=sell&kind=unicorn&heads=4&day=2024-11-01', '"unicorn" is not here; choose from the list.'],
  ['add=sell&kind=brachypelma-hamorii&heads=40&day=2024-11-01', '"40" Mexican red-knees: there are 6.'],
  [
    'if=sell:brachypelma-hamorii:4:2024-11-01&add=sell&kind=brachypelma-hamorii&heads=3&day=2024-11-01&with=0',
    '"3" Mexican red-knees: there are 2.',
  ],
  ['add=sell&kind=phidippus-regius&heads=1&day=2024-11-01', '"1" regal jumping spiders: there are none.'],
  [
    'if=sell:brachypelma-hamorii:40:2024-11-01',
    '"sell:brachypelma-hamorii:40:2024-11-01" in the address cannot be supposed: "40" Mexican red-knees: there are 6.',
  ],
  ['add=dies&bin=B99', '"B99" is not here; choose from the list.'],
  [
    'if=warmer:2&if=warmer:3&if=warmer:4&add=warmer&degrees=5',
    'At most 3 stand side by side; put it together with one of them.',
  ],
])('%s is refused beside the field, and what was typed stays', async (query, sentence) => {
  const { app } = await filledHome();
  const answer = await app.request(`/plan/what-if?weeks=12&${query}`);
  expect(answer.status).toBe(422);
  expect(plain(await answer.text())).toContain(sentence);
});

test('what an address cannot mean is said, and the rest is shown', async () => {
  const { app } = await filledHome();
  const answer = await app.request('/plan/what-if?weeks=12&if=warmer:2&if=flood:3&if=dies:B99&rest=1');
  expect(answer.status).toBe(422);
  const html = plain(await answer.text());
  expect(html).toContain('"flood:3" in the address cannot be supposed:');
  expect(html).toContain('"dies:B99" in the address cannot be supposed: "B99" is not here');
  expect(html).toContain('<h2>2 degrees warmer</h2>');
});

test('what would be done instead of a line is a what if of that line', async () => {
  const home = await filledHome();
  const [species] = home.room.facts.species.keys();
  const key = `start:${species}@2024-10-20`;
  await keepPlan(home, []);
  await keepPlan(home, [{ what: 'without', key }], { whole: dearer });
  const html = plain(await home.see(`/plan/what-if?weeks=12&if=without:${key}`));
  expect(html).toMatch(/<h1>Without cups of [^<]+ on Sun 20 Oct: €12.40 dearer/);
  await keepPlan(home, [{ what: 'without', key: 'rest:B1' }], { whole: dearer });
  const fed = plain(await home.see('/plan/what-if?weeks=12&if=without:rest:B1'));
  expect(fed).toContain('<h1>Without leaving Small box alone: €12.40 dearer');
  const wrong = await home.app.request('/plan/what-if?weeks=12&if=without:order:F99@2024-10-20&rest=1');
  expect(wrong.status).toBe(422);
  expect(plain(await wrong.text())).toContain('"order:F99@2024-10-20" is no line of a plan.');
});

test('a kept plan and a kept what if are compared at once: cost, meals and steps', async () => {
  const home = await filledHome();
  await keepPlan(home, []);
  await keepPlan(home, [WARMER], { whole: dearer, lines: plan.lines.slice(1) });
  const html = plain(await home.see('/plan/what-if?weeks=12&if=warmer:2'));
  expect(html).toContain(
    '<h1>2 degrees warmer: €12.40 dearer, about as many meals missed; 1 step dropped</h1>',
  );
  expect(html).toContain('<h3>Dropped</h3>');
  expect(html).not.toContain('data-hx-trigger="load"');
});

test('what is not made yet is asked for one by one, and news replace the whole part', async () => {
  const home = await filledHome();
  await keepPlan(home, []);
  const html = plain(await home.see('/plan/what-if?weeks=12&if=warmer:2'));
  expect(html).toContain('1 plan is being made');
  expect(html).toContain('data-hx-get="/plan/what-if/answers?weeks=12&if=warmer%3A2&seen=1"');
  const news = await home.app.request('/plan/what-if/answers?weeks=12&if=warmer%3A2&seen=1');
  expect(news.headers.get('hx-retarget')).toBe('#what-ifs');
  expect(await news.text()).toMatch(/^<section id="what-ifs"/);
});

test('stopped, it is not begun again by itself; waited for, all of it is there', async () => {
  const home = await filledHome();
  const sent = await home.send('/plan/what-if/cancel', { asked: 'weeks=12&if=warmer:2' });
  expect([sent.status, sent.headers.get('location')]).toEqual([
    303,
    '/plan/what-if?weeks=12&if=warmer%3A2&rest=1',
  ]);
  const rests = await home.see('/plan/what-if?weeks=12&if=warmer%3A2&rest=1');
  expect(rests).toContain('Not all of these plans are made.');
  expect(rests).not.toContain('data-hx-trigger="load"');
  const waited = await home.see('/plan/what-if?weeks=12&if=warmer%3A2&wait=1');
  expect(waited).toContain('<h2>2 degrees warmer</h2>');
  expect(waited).not.toContain('Not worked out yet');
});

test('nothing is written down by supposing it', async () => {
  const home = await filledHome();
  const before = await home.acts();
  await home.see('/plan/what-if?weeks=12&if=dies:B1&wait=1');
  expect(await home.acts()).toBe(before);
  good(await addRoom(home.room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  expect(await home.see('/larder')).toContain('Small box');
});
