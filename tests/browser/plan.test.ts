/** The plan in a real browser: a price changes it and its reasons, a running solve is stopped, a what if is kept and opened again. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isBuilt, type Program, startProgram } from '../support/built-program.ts';
import { launchChromium } from '../support/chromium.ts';
import { furnishPlanning } from '../support/planning-room.ts';

const PHONE = { width: 390, height: 844 };
/** Of a plan, on a busy machine. */
const PATIENCE_MS = 90_000;
const LONGEST_MS = 240_000;

const folder = mkdtempSync(join(tmpdir(), 'preylarder-plan-'));
let program: Program;
let browser: Browser;

beforeAll(async () => {
  if (!isBuilt()) return;
  const database = join(folder, 'larder.db');
  await furnishPlanning(database);
  program = await startProgram({ database });
  browser = await launchChromium();
}, LONGEST_MS);
afterAll(async () => {
  await browser?.close();
  await program?.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function open(path: string, { script = true } = {}): Promise<Page> {
  const page = await browser.newPage({
    baseURL: program.address,
    viewport: PHONE,
    javaScriptEnabled: script,
  });
  page.setDefaultTimeout(PATIENCE_MS);
  await page.goto(path);
  return page;
}

const reasons = (page: Page) => page.locator('.plan-line').allTextContents();
const made = (page: Page) =>
  page.getByRole('heading', { name: 'The plan is being made' }).waitFor({ state: 'detached' });

describe.skipIf(!isBuilt())('the plan (the program must have been built)', () => {
  it(
    'changes with a price, and so do its reasons; meanwhile the last one stays',
    async () => {
      const page = await open('/plan?weeks=8');
      await page.getByRole('heading', { level: 1, name: /^(Order from |Nothing to order)/ }).waitFor();
      const before = await reasons(page);
      expect(before.join()).toContain('Far Field Feeders');
      expect(before.join()).toMatch(/One house cricket eaten costs €0\.\d+\./);
      await page.goto('/offers/F1/edit');
      await page.getByLabel('A pack costs, in EUR').fill('30');
      await page.getByRole('button', { name: 'Save' }).click();
      await page.goto('/plan?weeks=8');
      await page.getByText('before your last change').waitFor();
      expect(await reasons(page)).toEqual(before);
      await made(page);
      const after = await reasons(page);
      expect(after.join()).toContain('Near Lane Feeders');
      expect(after.join()).not.toContain('Far Field Feeders');
      await page.close();
    },
    LONGEST_MS,
  );

  it(
    'is stopped by a button that keeps its place, and made when it is asked for again',
    async () => {
      const page = await open('/plan?weeks=26');
      const stop = page.getByRole('button', { name: 'Stop it' });
      await stop.focus();
      await page.getByRole('progressbar', { name: 'How far the plan is' }).waitFor();
      await page.waitForResponse((answer) => answer.url().includes('/plan/progress'));
      expect(await stop.evaluate((button) => button === document.activeElement)).toBe(true);
      await page.keyboard.press('Enter');
      await page.waitForURL(/rest=1/);
      expect(await page.getByRole('progressbar').count()).toBe(0);
      const again = page.getByRole('link', { name: /^Make (it anew|the plan)$/ });
      expect(await again.getAttribute('href')).toBe('/plan?weeks=26');
      const next = await open('/plan?weeks=4&wait=1');
      expect(await next.getByRole('heading', { level: 1 }).textContent()).toMatch(/^Order /);
      await next.close();
      await page.close();
    },
    LONGEST_MS,
  );

  it(
    'is pinned by its address and works without script',
    async () => {
      const page = await open('/plan?weeks=4&wait=1', { script: false });
      await page
        .getByRole('link', { name: /^Forbid it/ })
        .first()
        .click();
      expect(page.url()).toContain('forbid=order');
      await page.getByRole('link', { name: 'Wait for it' }).click();
      await page.getByRole('heading', { name: 'Your wishes' }).waitFor();
      expect(await page.getByText(/^Forbidden: /).count()).toBe(1);
      await page.close();
    },
    LONGEST_MS,
  );
});

describe.skipIf(!isBuilt())('a what if (the program must have been built)', () => {
  it(
    'is composed by a form, compared, kept as an address, and opened again',
    async () => {
      const page = await open('/plan/what-if?weeks=4');
      await page.getByText('It is warmer or colder indoors').click();
      await page.getByLabel('Degrees warmer').fill('3');
      await page.getByRole('group').getByRole('button', { name: 'What then?' }).click();
      await page.getByRole('columnheader', { name: 'As it is' }).waitFor();
      const found = await page.getByRole('heading', { level: 1 }).textContent();
      expect(found).toMatch(/^3 degrees warmer: .*(dearer|cheaper|costs the same)/);
      const kept = page.url();
      expect(decodeURIComponent(kept)).toContain('weeks=4&if=warmer:3');
      await page.close();
      const again = await open(kept);
      expect(await again.getByRole('heading', { level: 1 }).textContent()).toBe(found);
      expect(await again.getByRole('progressbar').count()).toBe(0);
      await again.close();
    },
    LONGEST_MS,
  );
});
