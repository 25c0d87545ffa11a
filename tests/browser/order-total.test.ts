/** The sum of a new order in a real browser: it follows what is typed, and without script the form does without it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isBuilt, type Program, startProgram } from '../support/built-program.ts';
import { launchChromium } from '../support/chromium.ts';
import { furnishPlanning } from '../support/planning-room.ts';

const LONGEST_MS = 120_000;
const folder = mkdtempSync(join(tmpdir(), 'preylarder-total-'));
let program: Program;
let browser: Browser;

beforeAll(async () => {
  if (!isBuilt()) return;
  const database = join(folder, 'larder.db');
  await furnishPlanning(database);
  [browser, program] = await Promise.all([launchChromium(), startProgram({ database })]);
}, LONGEST_MS);
afterAll(async () => {
  await browser?.close();
  await program?.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function ordering({ script }: { script: boolean }): Promise<Page> {
  const page = await browser.newPage({ baseURL: program.address, javaScriptEnabled: script });
  page.setDefaultTimeout(20_000);
  await page.goto('/orders/new?supplier=S1');
  return page;
}

const packs = (page: Page) => page.getByLabel(/^Packs of/).first();

describe.skipIf(!isBuilt())('a new order (the program must have been built)', () => {
  it(
    'is added up as it is typed',
    async () => {
      const page = await ordering({ script: true });
      const status = page.getByRole('status').filter({ hasText: '€' });
      for (const many of ['2', '3']) {
        await packs(page).fill(many);
        await status.waitFor();
      }
      const three = await status.textContent();
      await packs(page).fill('4');
      await expect.poll(() => status.textContent()).not.toBe(three);
      await packs(page).fill('');
      await status.waitFor({ state: 'detached' });
      await page.close();
    },
    LONGEST_MS,
  );

  it(
    'can be written down without script, with no sum',
    async () => {
      const page = await ordering({ script: false });
      await packs(page).fill('4');
      expect(await page.locator('#order-total').textContent()).toBe('');
      await page.getByRole('button', { name: 'Write it down' }).click();
      await page.waitForURL('**/orders');
      await page.close();
    },
    LONGEST_MS,
  );
});
