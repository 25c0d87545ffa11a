/** A keeper's first evening in a real browser, with the built program on an empty folder. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchChromium } from '../support/chromium.ts';

const BUILT = fileURLToPath(new URL('../../dist/src/main.js', import.meta.url));
const isBuilt = existsSync(BUILT);
const DAY_ENDS_MS = 4 * 3_600_000;
const DAY_MS = 86_400_000;
const LONGEST_WAIT_MS = 8000;

/** The date so many days before the program's today. */
const daysAgo = (days: number): string =>
  new Date(Date.now() - DAY_ENDS_MS - days * DAY_MS).toISOString().slice(0, 10);

const ANIMALS = [
  'Name;Species;Sex;Stage;Leg span;Rack;Last fed',
  ...['Ember', 'Clove', 'Rusk', 'Thorn'].map(
    (name) => `${name};Brachypelma hamorii;0.1;juvenile;5 cm;Rack A;${daysAgo(30)}`,
  ),
].join('\n');
const STOCK = ['bin,prey,size,count,came', `Cricket box,crickets,8-12 mm,40,${daysAgo(1)}`].join('\n');

const folder = mkdtempSync(join(tmpdir(), 'preylarder-evening-'));
let program: ChildProcess | null = null;
let browser: Browser | null = null;
let address = '';

/** Starts the program and waits for the address it prints. */
async function started(): Promise<string> {
  const env = {
    PATH: process.env.PATH,
    PREYLARDER_DB: join(folder, 'larder.db'),
    PREYLARDER_TIMEZONE: 'UTC',
    PORT: '0',
  };
  const child = spawn(process.execPath, [BUILT], { env, stdio: ['ignore', 'pipe', 'pipe'] });
  program = child;
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece) => (said += piece));
  for (;;) {
    const found = /Preylarder is at (\S+)/.exec(said)?.[1];
    if (found !== undefined) return found;
    if (child.exitCode !== null) throw new Error(`The program ended: ${said}`);
    await pause(50);
  }
}

beforeAll(async () => {
  if (isBuilt) [address, browser] = await Promise.all([started(), launchChromium()]);
});
afterAll(async () => {
  await browser?.close();
  if (program?.exitCode === null && program.kill('SIGTERM')) await once(program, 'exit');
  rmSync(folder, { recursive: true, force: true });
});

const heading = (page: Page, name: string | RegExp) => page.getByRole('heading', { level: 1, name });
const goTo = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Pages' }).getByRole('link', { name }).click();
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

async function clearTheDemo(page: Page): Promise<void> {
  await page.goto(address);
  await page.getByRole('link', { name: 'Start your own' }).click();
  await press(page, 'Clear the demo room');
  await heading(page, 'Nobody to feed yet').waitFor();
}

async function bringIn(page: Page, what: string, text: string): Promise<void> {
  await goTo(page, 'Settings');
  await page.getByRole('link', { name: 'Bring in a list' }).click();
  await page.getByRole('radio', { name: what }).check();
  const file = { name: 'list.csv', mimeType: 'text/csv', buffer: Buffer.from(text) };
  await page.getByLabel('A file saved as CSV').setInputFiles(file);
  await press(page, 'Read it');
  await heading(page, /^Ready: \d+ new/).waitFor();
  await press(page, 'Write it down');
}

async function feedEveryDay(page: Page): Promise<void> {
  await goTo(page, 'Settings');
  const days = page.getByRole('group', { name: 'You feed on' });
  for (const day of ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'])
    await days.getByRole('checkbox', { name: day }).check();
  await page.getByRole('region', { name: 'Feeding days' }).getByRole('button', { name: 'Save' }).click();
  await heading(page, 'You feed every day').waitFor();
}

/** The verdict and the sentence below it. */
async function sundaySays(page: Page): Promise<string> {
  await goTo(page, 'Sunday');
  const verdict = page.locator('.verdict', { hasText: 'Nobody misses a meal in' });
  return (await verdict.textContent()) ?? '';
}

it('moves in, reads Sunday, feeds tonight, reads it again and undoes it', async ({ skip }) => {
  skip(!isBuilt, 'dist/src/main.js is missing: run `npm run build` first.');
  const page = await browser!.newPage({ viewport: { width: 390, height: 844 } });
  page.setDefaultTimeout(LONGEST_WAIT_MS);
  await clearTheDemo(page);
  await bringIn(page, 'Animals', ANIMALS);
  await heading(page, '4 animals live here').waitFor();
  await bringIn(page, 'Prey in the larder', STOCK);
  await heading(page, /^Alive here: about \d+ house crickets$/).waitFor();
  await feedEveryDay(page);
  const before = await sundaySays(page);

  await goTo(page, 'Tonight');
  await heading(page, '4 animals eat tonight').waitFor();
  await page.getByRole('checkbox', { name: 'Not fed (Thorn)' }).check();
  await press(page, 'Everyone else got theirs');
  await page.getByRole('button', { name: /^Undo ?: Round of .+: 3 fed, 1 not$/ }).waitFor();
  expect(await sundaySays(page)).not.toBe(before);

  await page.getByRole('button', { name: /^Undo ?: Round of/ }).click();
  await page.getByRole('button', { name: /^Undo ?: Undid: Round of/ }).waitFor();
  expect(await sundaySays(page)).toBe(before);
  await page.close();
});
