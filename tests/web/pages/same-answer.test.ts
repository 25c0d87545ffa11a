/** One room, one answer: page, data and core agree, and an answer kept is the answer computed anew. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  askSunday,
  countBin,
  discard,
  loadSnapshot,
  recordMeasure,
  undo,
} from '../../../src/actions/index.ts';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import { emptyHome, filledHome, type Home } from '../../support/house.ts';

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
const seenIn = async ({ app }: Home): Promise<unknown> => (await app.request('/api/check.json')).json();

test('the page, the data and the core give the same verdict and numbers', async () => {
  const home = await filledHome();
  const answer = sundayCheck(await loadSnapshot(home.room));
  expect(await seenIn(home)).toEqual(plain(answer));
  const html = await home.see('/');
  expect(html).toContain(answer.headline.replaceAll("'", '&#39;'));
  expect(html).toContain(`${Math.round(answer.nothingMissed.chance * 100)} %`.replace('100 %', 'over 99 %'));
  expect(answer.mealsDue).toBeGreaterThan(0);
});

test('nothing here is an answer too', async () => {
  const home = await emptyHome();
  expect(await seenIn(home)).toMatchObject({ verdict: 'empty', groups: [], bins: [] });
});

test('the answer of another day is not shown', async () => {
  const home = await filledHome();
  await seenIn(home);
  home.room.pass(1);
  expect(await seenIn(home)).toMatchObject({ day: 20_001 });
});

const writes = [
  (home: Home, n: number) => countBin(home.room, { bin: 'B1', heads: n }),
  (home: Home, n: number) => discard(home.room, { bin: 'B2', heads: 1 + (n % 20) }),
  (home: Home, n: number) => recordMeasure(home.room, { animal: 'A1', gaugeMm: 40 + (n % 30) }),
  async (home: Home) => undo(home.room, { act: await home.acts() }),
] as const;

test('after any writes the answer kept is the answer computed anew', { timeout: 120_000 }, async () => {
  const step = fc.tuple(fc.nat(writes.length - 1), fc.nat(300), fc.boolean());
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 4 }), async (steps) => {
      const home = await filledHome();
      await askSunday(home.room);
      for (const [which, n, ask] of steps) {
        await writes[which]?.(home, n);
        if (ask) await askSunday(home.room);
      }
      const computed = sundayCheck(await loadSnapshot(home.room));
      expect(await seenIn(home)).toEqual(plain(computed));
      expect(await seenIn(home)).toEqual(plain(computed));
    }),
    { numRuns: 8 },
  );
});
