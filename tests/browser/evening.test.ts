/** A keeper's first evening in a real browser: from an empty folder to a verdict of one's own, a round, and an undo. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nowIn } from '../../src/actions/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import { isBuilt, startProgram } from '../support/built-program.ts';
import { launchChromium } from '../support/chromium.ts';

const PHONE = { width: 390, height: 844 };
let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

/** By the keeper's own day, which lasts until 04:00, as the program counts it. */
const HERE = Intl.DateTimeFormat().resolvedOptions().timeZone;
const daysAgo = (days: number): string => civilDate(nowIn(HERE, new Date()).today - days);

const ANIMALS = [
  'who,kind,size,unit,fed,shelf',
  ...Array.from(
    { length: 8 },
    (_, i) => `Sling ${i + 1},Brachypelma hamorii,${12 + i * 0.2},mm,${daysAgo(8)},Top shelf`,
  ),
].join('\n');
const PREY = `bin,prey,size,count,came\nCricket box,house cricket,3-4 mm,40,${daysAgo(1)}`;

async function bringIn(page: Page, what: 'Animals' | 'Prey in the larder', list: string): Promise<void> {
  await page.goto('/import');
  await page.getByRole('radio', { name: what }).check();
  await page.getByLabel('or paste the cells here').fill(list);
  await page.getByRole('button', { name: 'Read it' }).click();
  await page.getByRole('button', { name: 'Write it down' }).click();
}

/** Whatever day of the week the test runs on, it is a feeding day. */
async function feedEveryDay(page: Page): Promise<void> {
  await page.goto('/settings');
  const days = page.getByRole('group', { name: 'You feed on' }).getByRole('checkbox');
  for (const day of await days.all()) await day.check();
  await page.getByRole('region', { name: 'Feeding days' }).getByRole('button', { name: 'Save' }).click();
  expect(await headline(page)).toBe('You feed every day');
}

const headline = (page: Page) => page.getByRole('heading', { level: 1 }).textContent();

/** What Sunday says first: the verdict and how sure it is. */
async function sunday(page: Page): Promise<string> {
  await page.goto('/');
  return `${await headline(page)} ${await page.locator('.lede').first().textContent()}`;
}

describe.skipIf(!isBuilt())('a first evening (the program must have been built)', () => {
  it.each([true, false])(
    'goes from an empty folder to a verdict, a round and an undo; script: %s',
    async (script) => {
      const program = await startProgram();
      try {
        const context = await browser.newContext({
          viewport: PHONE,
          javaScriptEnabled: script,
          baseURL: program.address,
        });
        const page = await context.newPage();
        page.setDefaultTimeout(8000);
        await page.goto('/');
        await page.getByRole('link', { name: 'Start your own' }).click();
        await page.getByRole('button', { name: 'Clear the demo room' }).click();
        await page.goto('/');
        expect(await headline(page)).toContain('Nobody to feed yet');

        await bringIn(page, 'Animals', ANIMALS);
        await bringIn(page, 'Prey in the larder', PREY);
        await feedEveryDay(page);
        const before = await sunday(page);
        expect(before).toMatch(/meals due/);

        await page.goto('/tonight');
        expect(await headline(page)).toContain('8 animals eat tonight');
        await page.getByRole('checkbox', { name: 'Not fed' }).first().check();
        await page.getByRole('button', { name: 'Everyone else got theirs' }).click();
        await page.getByRole('heading', { name: 'Everybody due tonight is written down' }).waitFor();
        const after = await sunday(page);
        expect(after).not.toBe(before);

        await page.getByRole('button', { name: 'Undo' }).first().click();
        expect(await sunday(page)).toBe(before);
        await context.close();
      } finally {
        await program.stop();
      }
    },
    60_000,
  );
});
