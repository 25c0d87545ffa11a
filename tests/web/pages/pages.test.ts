/** Every page answers, from nothing and from a filled room, and every route is known by what it does. */

import { Hono } from 'hono';
import { expect, test } from 'vitest';
import { addAnimal, lend } from '../../../src/actions/index.ts';
import { mountPages } from '../../../src/web/pages/index.ts';
import { OWN } from '../../support/door.ts';
import { emptyHome, filledHome } from '../../support/house.ts';
import { attributes, insides, tags } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const PAGES = [
  '/help',
  '/',
  '/more',
  '/start',
  '/tonight',
  '/morning',
  '/animals',
  '/animals/new',
  '/larder',
  '/orders',
  '/orders/new',
  '/orders/new?supplier=S1',
  '/larder/new',
  '/larder/colony-start',
  '/larder/colony-start?species=acheta-domesticus',
  '/bulk',
  '/plan',
  '/plan?weeks=8&rest=1',
  '/plan/what-if',
  '/plan/what-if?if=warmer:2&rest=1',
  '/book',
  '/book?q=knee',
  '/book/kinds/new?from=tarantula',
  '/book/kinds/brachypelma-hamorii',
  '/book/kinds/brachypelma-hamorii?change=adult',
  '/book/kinds/mantid?change=kind',
  '/book/prey/acheta-domesticus',
  '/book/prey/drosophila-hydei?at=12&change=Keeping',
  '/book/method',
  '/book/method?change=Verdict',
  '/suppliers',
  '/suppliers/new',
  '/settings',
  '/import',
  '/history',
  '/gone',
  '/labels',
  '/away',
  '/sacs',
];
const RECORDS = [
  '/animals/A1',
  '/animals/A2/edit',
  '/animals/A2/split',
  '/animals/change?animal=A2',
  '/larder/B1',
  '/larder/B3',
  '/larder/B1/edit',
  '/bulk?offer=F1&weeks=6',
  '/suppliers/S1',
  '/suppliers/S1/edit',
  '/suppliers/S1/offers',
  '/offers/F1/edit',
];

/** Short addresses on labels, which lead on. */
const SHORT = ['/a/:code', '/A/:code', '/b/:code', '/B/:code'];

/** What each route does: a new one fails here until it is put in its place. */
const HERD_ACTS = ['move', 'stage', 'kind', 'gone', 'lend', 'died'].map((act) => `/animals/change/${act}`);
const READS = [
  '/help',
  '/',
  '/more',
  '/start',
  '/act',
  '/weeks',
  '/api/check.json',
  '/tonight',
  '/morning',
  '/animals',
  '/animals/new',
  '/animals/:code',
  '/animals/:code/edit',
  '/animals/:code/split',
  '/animals/:code/came-back',
  '/animals/change',
  ...HERD_ACTS,
  '/larder',
  '/larder/new',
  '/larder/colony-start',
  '/larder/colony-start/answer',
  '/orders',
  '/orders/:code/box',
  '/orders/new',
  '/orders/new/total',
  '/larder/:code',
  '/larder/:code/edit',
  '/bulk',
  '/bulk/answer',
  '/plan',
  '/plan/progress',
  '/plan/what-if',
  '/plan/what-if/answers',
  '/book',
  '/book/kinds/new',
  '/book/kinds/:code',
  '/book/method',
  '/book/prey/:code',
  '/suppliers',
  '/suppliers/new',
  '/suppliers/:code',
  '/suppliers/:code/edit',
  '/suppliers/:code/offers',
  '/offers/:code/edit',
  '/settings',
  '/import',
  '/walk',
  '/walk/shelf',
  '/tonight/sheet',
  '/tonight/key-in',
  '/history',
  '/gone',
  '/away',
  '/away/sheet',
  '/sacs',
  '/labels',
  ...SHORT,
];
const WRITES = [
  ...['animal', 'room', 'feeding', 'bin'].map((step) => `/start/${step}`),
  '/tonight/key-in',
  ...['', '/moved', '/shelf', '/shelf/moved'].map((act) => `/walk${act}`),
  '/tonight',
  '/tonight/preview',
  '/morning',
  '/animals/new',
  '/animals/:code/edit',
  ...['moulted', 'measured', 'premoult', 'matured', 'died', 'left', 'split', 'heads', 'came-back'].map(
    (act) => `/animals/:code/${act}`,
  ),
  ...HERD_ACTS,
  '/larder/new',
  '/larder/colony-start',
  '/plan/cancel',
  '/plan/apply',
  '/plan/what-if/cancel',
  '/larder/:code/edit',
  ...['count', 'look', 'weigh', 'size', 'discard', 'move', 'cup-look', 'close'].map(
    (act) => `/larder/:code/${act}`,
  ),
  ...['dead', 'adults', 'sexed', 'die-off', 'harvest', 'cull', 'retire', 'split', 'merge'].map(
    (act) => `/larder/:code/${act}`,
  ),
  ...['place', 'cold', 'quarantine', 'rest', 'clean-out'].map((act) => `/larder/:code/${act}`),
  '/book/kinds/new',
  ...['rule', 'rule-effect', 'edit', 'edit-effect', 'rename', 'reset', 'remove'].map(
    (act) => `/book/kinds/:code/${act}`,
  ),
  ...['method', 'prey/:code'].flatMap((of) => ['numbers', 'reset'].map((act) => `/book/${of}/${act}`)),
  '/deliveries',
  '/deliveries/:code/arrived',
  '/deliveries/:code/cancelled',
  '/deliveries/:code/again',
  '/orders/new',
  ...['came', 'late', 'cancelled'].map((act) => `/orders/:code/${act}`),
  '/suppliers/new',
  ...['edit', 'offers', 'holidays', 'holidays/remove', 'close'].map((act) => `/suppliers/:code/${act}`),
  ...['edit', 'close'].map((act) => `/offers/:code/${act}`),
  ...[
    'feeding',
    'deliveries',
    'units',
    'theme',
    'rooms',
    'rooms/remove',
    'rooms/temperatures',
    'absences',
    'absences/remove',
    'changes',
    'changes/edit',
    'changes/remove',
    'purse',
    'plan',
    'weather',
    'weather/remove',
  ].map((act) => `/settings/${act}`),
  '/import',
  '/import/check',
  '/import/confirm',
  '/away',
  '/sacs',
  ...['pulled', 'hatched', 'settled', 'ended', 'edit', 'cancel'].map((act) => `/sacs/:code/${act}`),
  '/demo/start',
  '/demo/remove',
  '/undo/:act',
  '/gone/back',
];

test.each(PAGES)('%s answers from an empty database', async (path) => {
  const { app } = await emptyHome();
  const answer = await app.request(path);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toMatch(/^<!doctype html>.*<h1>/s);
});

test.each([...PAGES, ...RECORDS])('%s answers from a filled room, each id once', async (path) => {
  const { app } = await filledHome();
  const answer = await app.request(path);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('vary')).toContain('Cookie');
  const html = await answer.text();
  const ids = attributes(html, 'id');
  expect(ids).toEqual([...new Set(ids)]);
  const forms = tags(html, 'input').filter((tag) => tag.includes('name="formId"'));
  const formIds = forms.flatMap((tag) => attributes(tag, 'value'));
  expect(new Set(formIds).size).toBe(formIds.length);
  expect(attributes(html, 'style')).toEqual([]);
  expect(insides(html, 'script').join('')).toBe('');
});

test.each([
  '/animals/A9',
  '/animals/A9/edit',
  '/animals/A1/split',
  '/animals/A1/came-back',
  '/larder/B9',
  '/larder/B9/edit',
  '/suppliers/S9',
  '/suppliers/S9/edit',
  '/suppliers/S9/offers',
  '/offers/F9/edit',
])('%s is not here', async (path) => {
  const { app } = await filledHome();
  expect((await app.request(path)).status).toBe(404);
});

const NOBODY_CHOSEN = 422;

/** A kind, a prey species, a supplier, an offer, a bin, one animal, the group or the one that is lent. */
function codeFor(path: string): string {
  if (path.startsWith('/book/prey')) return 'acheta-domesticus';
  if (path.startsWith('/book')) return 'tarantula';
  if (path.startsWith('/suppliers')) return 'S1';
  if (path.startsWith('/offers')) return 'F1';
  if (!path.startsWith('/animals')) return 'B1';
  if (path.endsWith('/split')) return 'A2';
  return path.endsWith('/came-back') ? 'A3' : 'A1';
}

test('every route is known to read or to write, has the strict headers, and writes only for our own pages', async () => {
  const { app, room } = await filledHome();
  good(await addAnimal(room, { kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 40 }));
  good(await lend(room, { animals: ['A3'], to: 'Jo' }));
  const mounted = new Hono();
  mountPages(mounted as never, {
    context: room,
    answering: null as never,
    underWay: null as never,
    furnish: null as never,
    canLogOut: false,
  });
  const routesOf = (method: string) =>
    mounted.routes
      .filter((route) => route.method === method)
      .map(({ path }) => path)
      .sort();
  expect(routesOf('GET')).toEqual(READS.toSorted());
  expect(routesOf('POST')).toEqual(WRITES.toSorted());
  for (const { method, path } of mounted.routes) {
    const at = path.replace(':code', codeFor(path)).replace(':act', '1');
    const answer = await app.request(at, {
      method,
      headers: method === 'GET' ? {} : { ...OWN, origin: 'http://evil.example' },
    });
    const found = path.startsWith('/animals/change') ? NOBODY_CHOSEN : SHORT.includes(path) ? 302 : 200;
    expect(answer.status, `${method} ${at}`).toBe(method === 'GET' ? found : 403);
    expect(answer.headers.get('content-security-policy'), `${method} ${at}`).toContain("default-src 'none'");
  }
});

test('animals stand in shelf order, and a search finds by every word', async () => {
  const { see } = await filledHome();
  const all = await see('/animals');
  expect(all.indexOf('Ash')).toBeLessThan(all.indexOf('Sac of five'));
  const one = await see('/animals?q=sac+a10');
  expect(one).toContain('1 of 2 found: matching “sac a10”.');
  expect(one).not.toContain('Ash</a>');
  expect(await see('/animals?q=%3Cb%3Ehollow')).toContain('None of 2 found: matching “&lt;b&gt;hollow”.');
});

test('the light is kept by the browser and changes no record', async () => {
  const { app, send, acts } = await filledHome();
  const before = await acts();
  const answer = await send('/settings/theme', { theme: 'red', back: '/larder' });
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/larder']);
  const cookie = answer.headers.get('set-cookie')!.split(';')[0]!;
  const page = await (await app.request('/larder', { headers: { cookie } })).text();
  expect(page).toContain('class="theme-red"');
  expect(await acts()).toBe(before);
  const away = await send('/settings/theme', { theme: 'red', back: '//evil.example' });
  expect(away.headers.get('location')).toBe('/');
});
