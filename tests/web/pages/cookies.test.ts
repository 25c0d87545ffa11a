/** A word left for the next page, as a browser keeps it. */
import { Hono } from 'hono';
import { expect, test } from 'vitest';
import { sayNext, wordsLeft } from '../../../src/web/pages/cookies.ts';

const MOST_BYTES = 4096;

async function saidNext(text: string) {
  const app = new Hono()
    .get('/say', (c) => {
      sayNext(c, 'problem', text);
      return c.text('');
    })
    .get('/hear', (c) => c.json(wordsLeft(c)));
  const cookie = (await app.request('/say')).headers.get('set-cookie') ?? '';
  const [pair = ''] = cookie.split(';');
  const heard = await app.request('/hear', { headers: { cookie: pair } });
  return { bytes: cookie.length, words: await heard.json() };
}

test('a sentence comes through whole', async () => {
  const { words } = await saidNext('Ash ate (you: “refused”).');
  expect(words).toEqual([{ kind: 'problem', text: 'Ash ate (you: “refused”).' }]);
});

test('a sentence longer than a cookie is cut off, not lost', async () => {
  for (const name of ['Ash, ', 'Wüstenröte 🕷, ']) {
    const { bytes, words } = await saidNext(name.repeat(2000));
    expect(bytes).toBeLessThan(MOST_BYTES);
    expect(words).toEqual([{ kind: 'problem', text: expect.stringMatching(/^(Ash|Wüs).* …$/) }]);
  }
});
