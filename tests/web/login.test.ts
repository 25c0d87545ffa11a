/** The lock: nothing inside is shown or done without a session; guessing is slowed, never locked out. */
import { expect, test } from 'vitest';
import { setPassword } from '../../src/web/index.ts';
import { comeIn, cookieOf, door, OWN, PAGE } from '../support/door.ts';
import { good } from '../support/store-at.ts';

const OPEN = ['/livez', '/readyz', '/login', '/assets/:name'];
const DAY_S = 86_400;

test('every route is shut without a session, but for those named here', async () => {
  const { app } = await door({ locked: true });
  for (const { method, path } of app.routes.filter((route) => route.method !== 'ALL')) {
    const answer = await app.request(path.replace(':name', 'htmx.js'), {
      method,
      headers: { ...OWN, ...PAGE },
    });
    const shut = answer.status === 401 || answer.headers.get('location')?.startsWith('/login?next=') === true;
    expect(shut, `${method} ${path}`).toBe(!OPEN.includes(path));
  }
});

test('the password opens, the cookie keeps it open, logging out shuts it', async () => {
  const at = await door({ locked: true });
  const entered = await comeIn(at);
  expect(entered.status).toBe(303);
  expect(entered.headers.get('set-cookie')).toMatch(
    /^preylarder_session=[\w-]{43}; .*HttpOnly; SameSite=Lax$/,
  );
  const cookie = cookieOf(entered);
  expect(await (await at.app.request('/', { headers: { cookie } })).text()).toBe('home');
  await at.app.request('/logout', { method: 'POST', headers: { ...OWN, cookie } });
  expect((await at.app.request('/', { headers: { cookie } })).status).toBe(401);
});

test('over https the cookie is for https alone', async () => {
  const { app } = await door({ locked: true });
  const headers = { ...OWN, 'x-forwarded-proto': 'https' };
  const answer = await app.request('/login', { method: 'POST', headers, body: 'password=eight+legs+good' });
  expect(answer.headers.get('set-cookie')).toContain('Secure');
});

test('the id in the cookie is not what the database keeps', async () => {
  const at = await door({ locked: true });
  const id = cookieOf(await comeIn(at)).split('=')[1]!;
  const kept = await at.room.store.ask({
    sql: 'select id_hash from session',
    args: [],
    decode: (rows) => rows.map((row) => String(row.id_hash)),
  });
  expect(kept).toHaveLength(1);
  expect(kept[0]).not.toContain(id);
});

test('a session ends when idle for two weeks, and after ninety days in any case', async () => {
  const at = await door({ locked: true });
  const headers = { cookie: cookieOf(await comeIn(at)) };
  const inside = async () => (await at.app.request('/', { headers })).status === 200;
  for (let day = 0; day < 80; day += 10) {
    at.room.passSeconds(10 * DAY_S);
    expect(await inside()).toBe(true);
  }
  at.room.passSeconds(11 * DAY_S);
  expect(await inside()).toBe(false);
  const again = { cookie: cookieOf(await comeIn(at)) };
  at.room.passSeconds(15 * DAY_S);
  expect((await at.app.request('/', { headers: again })).status).toBe(401);
});

test('a new password ends every session; the same one again ends none', async () => {
  const at = await door({ locked: true });
  const headers = { cookie: cookieOf(await comeIn(at)) };
  good(await setPassword(at.room.store, 'eight legs good'));
  expect((await at.app.request('/', { headers })).status).toBe(200);
  good(await setPassword(at.room.store, 'another password'));
  expect((await at.app.request('/', { headers })).status).toBe(401);
  expect((await comeIn(at)).status).toBe(422);
});

test('guessing is slowed, the wait is said, and the right password opens after it', async () => {
  const at = await door({ locked: true });
  for (let miss = 0; miss < 4; miss += 1) expect((await comeIn(at, 'wrong guess')).status).toBe(422);
  const early = await comeIn(at);
  expect(early.status).toBe(429);
  expect(early.headers.get('retry-after')).toBe('1');
  expect(await early.text()).toContain('Too many tries. Wait 1 second and try again.');
  for (let miss = 0; miss < 8; miss += 1) {
    at.room.passSeconds(30);
    expect((await comeIn(at, 'wrong guess')).status).toBe(422);
  }
  at.room.passSeconds(30);
  expect((await comeIn(at)).status).toBe(303);
});

test('after the login the way leads only to this server', async () => {
  const { app, room } = await door({ locked: true });
  const asked = await app.request('/tonight?x=1', { headers: PAGE });
  expect(asked.headers.get('location')).toBe('/login?next=%2Ftonight');
  for (const next of ['//evil.example', 'https://evil.example', '/\\evil.example']) {
    room.passSeconds(60);
    const body = new URLSearchParams({ password: 'eight legs good', next }).toString();
    const answer = await app.request('/login', { method: 'POST', headers: OWN, body });
    expect(answer.headers.get('location')).toBe('/');
  }
});
