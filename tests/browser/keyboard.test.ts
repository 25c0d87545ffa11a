/** The round by keyboard alone, without script, and the single keys that can be turned off. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { isBuilt, type Program, startProgram } from '../support/built-program.ts';
import { launchChromium } from '../support/chromium.ts';
import { furnishEvening, journalOf } from '../support/evening-room.ts';

const DESK = { width: 1280, height: 800 };
const MOST_TABS = 80;
const folder = mkdtempSync(join(tmpdir(), 'preylarder-keys-'));
const database = join(folder, 'larder.db');
let browser: Browser;
let program: Program;

beforeAll(async () => {
  if (!isBuilt()) return;
  await furnishEvening(database, { shelves: ['A', 'B'], animalsPerShelf: 3 });
  [browser, program] = await Promise.all([launchChromium(), startProgram({ database })]);
}, 120_000);
afterAll(async () => {
  await browser?.close();
  await program?.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function visit(path: string, options: BrowserContextOptions = {}): Promise<Page> {
  const page = await browser.newPage({ viewport: DESK, baseURL: program.address, ...options });
  page.setDefaultTimeout(20_000);
  await page.goto(path);
  return page;
}

const press = async (page: Page, ...keys: readonly string[]) => {
  for (const key of keys) await page.keyboard.press(key);
};

/** Tabs on until what has the focus reads so. */
async function tabTo(page: Page, words: RegExp): Promise<void> {
  const reads = () => page.evaluate(() => document.activeElement?.textContent ?? '');
  for (let tabs = 0; tabs < MOST_TABS && !words.test(await reads()); tabs += 1)
    await page.keyboard.press('Tab');
  expect(await reads()).toMatch(words);
}

const focused = (page: Page) =>
  page.evaluate(() => {
    const { id, name, tagName } = document.activeElement as HTMLInputElement;
    return id || name || tagName.toLowerCase();
  });

const proposals = async (page: Page) => await page.locator('.serving').count();

describe.skipIf(!isBuilt())('the keeper without a mouse (the program must have been built)', () => {
  it('does the whole round with keys, and undoes it', async () => {
    const page = await visit('/tonight');
    expect(await proposals(page)).toBe(6);
    await press(page, 'j', '2', 'j', '3', 'Space', 'j', '2', '1');
    await tabTo(page, /^This shelf is done/);
    await press(page, 'Enter');
    await expect.poll(() => proposals(page), { timeout: 20_000 }).toBe(3);
    await press(page, 'j', 'ArrowDown', 'ArrowDown', 'ArrowUp', '2');
    await tabTo(page, /^Everyone else got theirs/);
    await press(page, 'Enter');
    await expect.poll(() => proposals(page), { timeout: 20_000 }).toBe(0);
    const written = (await journalOf(database)).map((line) => line.replace(/offered.*/, 'offered'));
    expect(written.toSorted()).toEqual([
      'A1 skipped',
      'A2 premoult',
      'A2 skipped',
      'A3 offered',
      'A4 offered',
      'A5 skipped',
      'A6 offered',
    ]);
    await press(page, 'u');
    expect(await focused(page)).toBe('undo-last');
    expect((await journalOf(database)).length).toBe(7);
    await press(page, 'Enter');
    await page.waitForEvent('load');
    await page.goto('/tonight');
    expect(await proposals(page)).toBe(6);
    expect(await journalOf(database)).toEqual([]);
    await page.close();
  });

  it('does not end a shelf when Enter is pressed on a mark', async () => {
    const page = await visit('/tonight');
    const before = await journalOf(database);
    await page.getByRole('checkbox', { name: 'Not fed' }).first().focus();
    await press(page, 'Space', 'Enter');
    await page.reload();
    expect(await page.getByRole('checkbox', { name: 'Not fed' }).first().isChecked()).toBe(true);
    const plain = await visit('/tonight', { javaScriptEnabled: false });
    await plain.getByRole('checkbox', { name: 'Not fed' }).first().focus();
    await press(plain, 'Space', 'Enter');
    await plain.waitForURL('**/tonight/preview');
    expect(await plain.getByRole('checkbox', { name: 'Not fed' }).first().isChecked()).toBe(true);
    expect(await journalOf(database)).toEqual(before);
    await Promise.all([page.close(), plain.close()]);
  });

  it('marks, ends a shelf and ends the round without script', async () => {
    const page = await visit('/tonight', { javaScriptEnabled: false });
    await page.getByRole('checkbox', { name: 'Not fed' }).first().check();
    await page.getByRole('button', { name: 'This shelf is done' }).first().click();
    await page.goto('/tonight');
    expect(await proposals(page)).toBe(3);
    await page.getByRole('checkbox', { name: 'Not fed' }).last().check();
    await page.getByRole('button', { name: 'Everyone else got theirs' }).click();
    await page.goto('/tonight');
    expect(await proposals(page)).toBe(0);
    const written = (await journalOf(database)).map((line) => line.replace(/offered.*/, 'offered'));
    expect(written.toSorted()).toEqual([
      'A1 skipped',
      'A2 offered',
      'A3 offered',
      'A4 offered',
      'A5 offered',
      'A6 skipped',
    ]);
    await page.close();
  });
});

describe.skipIf(!isBuilt())('single keys (the program must have been built)', () => {
  let page: Page;
  beforeEach(async () => {
    await page?.close();
    page = await visit('/larder');
  });

  it('show their list with ?, and find an animal with / from any page', async () => {
    await press(page, '?');
    const list = page.getByRole('dialog', { name: 'Keys' });
    await list.waitFor();
    expect(await list.getByRole('term').allTextContents()).toEqual(['/', '?', 'j↓', 'k↑', '123', 'u']);
    await press(page, 'Escape');
    await list.waitFor({ state: 'hidden' });
    await press(page, '/');
    await page.waitForURL('**/animals#q');
    await expect.poll(() => focused(page)).toBe('q');
    await page.keyboard.type('Sling?u/');
    expect(await page.getByRole('searchbox').inputValue()).toBe('Sling?u/');
  });

  it('can be turned off on this device, and on again from the help page', async () => {
    await press(page, '?');
    await page.getByRole('dialog').getByRole('switch', { name: 'Single keys' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await press(page, '/', '?', 'u');
    expect(new URL(page.url()).pathname).toBe('/larder');
    expect(await page.getByRole('dialog').count()).toBe(0);
    await page.getByRole('link', { name: 'Help and keys' }).click();
    const off = page.getByRole('switch', { name: 'Single keys' });
    await expect.poll(() => off.getAttribute('aria-checked'), { timeout: 20_000 }).toBe('false');
    await off.click();
    await press(page, '?');
    await page.getByRole('dialog').waitFor();
  });

  it('are told on the help page without script, with no switch that would do nothing', async () => {
    const plain = await visit('/help', { javaScriptEnabled: false });
    expect(await plain.getByRole('heading', { level: 1 }).textContent()).toContain('one question');
    expect(await plain.getByRole('term').count()).toBeGreaterThan(10);
    expect(await plain.getByRole('switch').count()).toBe(0);
    await plain.close();
  });
});
