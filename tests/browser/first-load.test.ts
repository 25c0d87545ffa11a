/** What a first visit costs over the wire: the page, its style sheets and its scripts, as the server sends them. */
import { mkdtempSync, rmSync } from 'node:fs';
import { type IncomingHttpHeaders, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { paths } from '../../views/paths.ts';
import { isBuilt, type Program, startProgram } from '../support/built-program.ts';
import { attributes, tags } from '../support/markup-words.ts';

const MOST_BYTES = 60_000;
const MOST_SCRIPT_BYTES = 25_000;
const PAGES = [paths.sunday, paths.tonight, paths.animals, paths.larder, paths.settings, paths.help];

const folder = mkdtempSync(join(tmpdir(), 'preylarder-load-'));
let program: Program;

beforeAll(async () => {
  if (isBuilt()) program = await startProgram({ database: join(folder, 'larder.db') });
}, 120_000);
afterAll(async () => {
  await program?.stop();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  /** As it came, still compressed. */
  readonly body: Buffer;
}

const ask = (path: string, headers: Readonly<Record<string, string>> = {}, method = 'GET') =>
  new Promise<Answer>((done, failed) => {
    const options = { method, headers: { accept: 'text/html', 'accept-encoding': 'gzip', ...headers } };
    request(`${program.address}${path}`, options, (answer) => {
      const pieces: Buffer[] = [];
      answer.on('data', (piece) => pieces.push(piece));
      answer.on('end', () =>
        done({ status: answer.statusCode ?? 0, headers: answer.headers, body: Buffer.concat(pieces) }),
      );
    })
      .on('error', failed)
      .end();
  });

const weightOf = async (list: readonly string[]): Promise<number> =>
  (await Promise.all(list.map((path) => ask(path)))).reduce((sum, { body }) => sum + body.length, 0);

describe.skipIf(!isBuilt())('a first visit to the demo room (the program must have been built)', () => {
  it.each(PAGES)('to %s takes at most 60 kB, of which 25 kB script', async (path) => {
    const page = await ask(path);
    expect(page.headers['content-encoding']).toBe('gzip');
    const html = gunzipSync(page.body).toString();
    const scripts = tags(html, 'script').flatMap((tag) => attributes(tag, 'src'));
    const styles = tags(html, 'link').flatMap((tag) => attributes(tag, 'href'));
    expect(scripts).toContain('/assets/app.js');
    expect(styles).toEqual(['/assets/style.css']);
    const scriptBytes = await weightOf(scripts);
    const total = page.body.length + scriptBytes + (await weightOf(styles));
    expect(scriptBytes).toBeLessThanOrEqual(MOST_SCRIPT_BYTES);
    expect(total).toBeLessThanOrEqual(MOST_BYTES);
  });

  it('brings our own script in one piece that needs no other', async () => {
    const { body } = await ask('/assets/app.js');
    const script = gunzipSync(body).toString();
    expect(() => new Function(script)).not.toThrow();
    expect(script).not.toMatch(/^(import|export) /m);
    expect(script).toContain("addEventListener('submit'");
  });

  it('is compressed once, only for those who ask, and told so to caches', async () => {
    const plain = await ask('/assets/app.css', { 'accept-encoding': 'identity' });
    const small = await ask('/assets/app.css');
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(small.headers.vary).toContain('Accept-Encoding');
    expect(gunzipSync(small.body).equals(plain.body)).toBe(true);
    expect(small.body.length).toBeLessThan(plain.body.length);
  });

  it('need not be sent again while it is the same', async () => {
    const first = await ask('/assets/app.js');
    const again = await ask('/assets/app.js', { 'if-none-match': first.headers.etag ?? '' });
    expect([again.status, again.body.length]).toEqual([304, 0]);
    expect(again.headers['content-encoding']).toBeUndefined();
  });

  it('answers HEAD with no body', async () => {
    for (const path of ['/', '/assets/app.js']) {
      const { status, body } = await ask(path, {}, 'HEAD');
      expect([status, body.length]).toEqual([200, 0]);
    }
  });
});
