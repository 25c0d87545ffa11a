/** The door: hosts, origins, sizes, headers and errors. */
import { expect, test } from 'vitest';
import { ownNames } from '../../src/web/index.ts';
import { door, FORM, OWN, PAGE } from '../support/door.ts';

test('every route carries the strict headers, whoever asks', async () => {
  for (const locked of [false, true]) {
    const { app } = await door({ locked });
    const routes = app.routes.filter(({ method }) => method !== 'ALL');
    expect(routes.length).toBeGreaterThanOrEqual(locked ? 9 : 6);
    for (const { method, path } of [...routes, { method: 'GET', path: '/nothing' }]) {
      const answer = await app.request(path.replace(':name', 'htmx.js'), { method, headers: OWN });
      expect(answer.headers.get('content-security-policy'), `${method} ${path}`).toBe(
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; " +
          "connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'",
      );
      expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
      expect(answer.headers.get('referrer-policy')).toBe('same-origin');
      expect(answer.headers.get('cross-origin-opener-policy')).toBe('same-origin');
      expect(answer.headers.get('permissions-policy')).toContain('camera=()');
      expect(answer.headers.get('cache-control')).not.toBeNull();
    }
  }
});

test.each(['localhost:8181', '127.0.0.1:8181', '[::1]:8181', 'larder.localhost'])(
  '%s is answered',
  async (host) => {
    const { app } = await door();
    expect((await app.request('/', { headers: { host } })).status).toBe(200);
  },
);

test.each(['evil.example', '127.0.0.1.evil.example', 'localhost.evil.example', ''])(
  'the host "%s" is not',
  async (host) => {
    const { app } = await door();
    const answer = await app.request('/', { headers: { host } });
    expect(answer.status).toBe(421);
    expect(await answer.text()).toContain(`This server is not called "${host}".`);
  },
);

test('addresses of this machine and names said are answered only behind a password', async () => {
  const address = ownNames().find((name) => /^\d+\.\d+\.\d+\.\d+$/.test(name) && !name.startsWith('127.'));
  const hosts = ['larder.home', ...(address === undefined ? [] : [`${address}:8181`])];
  const locked = await door({ locked: true, hostNames: ['larder.home'] });
  const open = await door();
  for (const host of hosts) {
    expect((await locked.app.request('/livez', { headers: { host } })).status).toBe(200);
    expect((await open.app.request('/livez', { headers: { host } })).status).toBe(421);
  }
});

const writes: readonly [string, Record<string, string>, number][] = [
  ['its own page', { ...FORM, origin: 'http://localhost' }, 200],
  ['its own page, by a browser that hides the Origin', { ...FORM, 'sec-fetch-site': 'same-origin' }, 200],
  ['another site', { ...FORM, origin: 'http://evil.example' }, 403],
  ['another port', { ...FORM, origin: 'http://localhost:9999' }, 403],
  ['a page without origin', { ...FORM, origin: 'null' }, 403],
  ['another site, by a browser that hides the Origin', { ...FORM, 'sec-fetch-site': 'cross-site' }, 403],
  ['nowhere', FORM, 403],
  ['its own page, as JSON', { ...OWN, 'content-type': 'application/json; charset=utf-8' }, 200],
  ['its own page, as plain text', { ...OWN, 'content-type': 'text/plain' }, 415],
];

test.each(writes)('a write from %s', async (_from, headers, status) => {
  const { app } = await door();
  expect((await app.request('/write', { method: 'POST', headers, body: 'a=1' })).status).toBe(status);
});

/** A body that streams, with no length said beforehand. */
function streamed(bytes: number): ReadableStream<Uint8Array> {
  const piece = new Uint8Array(64 * 1024).fill(97);
  let left = bytes;
  return new ReadableStream({
    pull: (controller) => {
      if (left <= 0) return controller.close();
      controller.enqueue(piece.subarray(0, Math.min(left, piece.length)));
      left -= piece.length;
    },
  });
}

test('a form over 2 MB and a file over 20 MB are turned away, said long or streamed', async () => {
  const { app } = await door();
  const MB = 1024 * 1024;
  const send = (headers: Record<string, string>, bytes: number) =>
    app.request('/write', { method: 'POST', headers, body: streamed(bytes), duplex: 'half' } as RequestInit);
  const file = { ...OWN, 'content-type': 'multipart/form-data; boundary=x' };
  expect((await send(OWN, MB)).status).toBe(200);
  expect((await send(file, 3 * MB)).status).toBe(200);
  const long = await send(OWN, 3 * MB);
  expect(long.status).toBe(413);
  expect(await long.text()).toContain('This is larger than 2 MB, so nothing was done.');
  expect((await send(file, 21 * MB)).status).toBe(413);
  const said = await app.request('/write', {
    method: 'POST',
    headers: { ...OWN, 'content-length': String(3 * MB) },
    body: 'a=1',
  });
  expect(said.status).toBe(413);
});

test('an error tells the keeper a number and the log the cause', async () => {
  const { app, lines } = await door();
  const answer = await app.request('/broken', { headers: PAGE });
  const page = await answer.text();
  expect(answer.status).toBe(500);
  expect(page).not.toContain('secret');
  const cause = lines.find(({ level }) => level === 'error');
  expect(cause?.error).toBe('select secret from table');
  expect(page).toContain(`<code>${String(cause?.request)}</code>`);
});

test('what is turned away is said as the asker reads: a page, JSON or text', async () => {
  const { app } = await door();
  const ask = (accept: string) => app.request('/nothing', { headers: { accept } });
  expect(await (await ask('text/html')).text()).toContain('<h1>There is nothing at /nothing.</h1>');
  expect(await (await ask('application/json')).json()).toMatchObject({
    sentence: 'There is nothing at /nothing.',
  });
  expect(await (await ask('*/*')).text()).toMatch(
    /^There is nothing at \/nothing\. \(request [0-9a-f]{12}\)\n$/,
  );
});

test('the log has a line a request, without its query', async () => {
  const { app, lines } = await door();
  await app.request('/?q=secret');
  expect(lines).toMatchObject([{ level: 'info', method: 'GET', path: '/', status: 200 }]);
  expect(JSON.stringify(lines)).not.toContain('secret');
});

test('assets have their type, a tag, and are kept for ever under the right tag', async () => {
  const { app } = await door();
  const first = await app.request('/assets/htmx.js');
  expect(first.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  expect(first.headers.get('cache-control')).toBe('public, no-cache');
  expect((await first.text()).length).toBeGreaterThan(1000);
  const tag = first.headers.get('etag')!;
  expect((await app.request('/assets/htmx.js', { headers: { 'if-none-match': tag } })).status).toBe(304);
  const kept = await app.request(`/assets/htmx.js?v=${tag.replaceAll('"', '')}`);
  expect(kept.headers.get('cache-control')).toContain('immutable');
  expect((await app.request('/assets/..%2f..%2fpackage.json')).status).toBe(404);
});

test('ready says why not', async () => {
  const { app, room } = await door();
  expect(await (await app.request('/readyz')).json()).toEqual({ ready: true, reasons: [] });
  await room.store.close();
  const answer = await app.request('/readyz');
  expect(answer.status).toBe(503);
  expect(await answer.json()).toEqual({ ready: false, reasons: ['The database does not answer.'] });
  expect((await app.request('/livez')).status).toBe(200);
});
