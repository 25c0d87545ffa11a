/** The outbox in a real browser: what is tapped while the server is away is kept, told, sent once and in order. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { isBuilt, type Program, startProgram } from '../support/built-program.ts';
import { launchChromium } from '../support/chromium.ts';
import { furnishEvening } from '../support/evening-room.ts';

/** What must hold before long, on a busy machine too. */
const eventually = <T>(read: () => T) => expect.poll(read, { timeout: 20_000 });
const PHONE = { width: 390, height: 844 };
const folder = mkdtempSync(join(tmpdir(), 'preylarder-outbox-'));
const database = join(folder, 'larder.db');
let browser: Browser;
let program: Program;
let context: BrowserContext;
let page: Page;

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
beforeEach(async () => {
  context = await browser.newContext({ viewport: PHONE, baseURL: program.address });
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
});
afterEach(() => context.close());

const away = () => context.route('**/*', (route) => route.abort('connectionrefused'));
const back = () => context.unroute('**/*');
const outbox = (of: Page = page) => of.getByRole('region', { name: 'Kept on this device' });
const words = (of: Page = page) => outbox(of).getByRole('status');
const history = (of: Page = page) => of.getByRole('region', { name: 'What happened' }).getByRole('listitem');

/** Forms kept on the device, oldest first. */
const kept = (of: Page = page) =>
  of.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('preylarder outbox')).length);

/** The latest try got no answer: the page has gone on to the outbox. Before that a form counts as just sent. */
const triedInVain = () => eventually(() => page.evaluate(() => document.activeElement?.id)).toBe('outbox');

const measured = (of: Page = page) => of.getByRole('button', { name: 'Measured', exact: true });

async function measure(size: string, of: Page = page): Promise<void> {
  await of.getByRole('textbox', { name: 'Leg span' }).first().fill(size);
  await measured(of).click();
}

describe.skipIf(!isBuilt())('the outbox (the program must have been built)', () => {
  it('is empty, and says nothing, when all goes well', async () => {
    await page.goto('/larder/B1');
    await page.getByRole('button', { name: 'Half', exact: true }).click();
    await history().filter({ hasText: 'looked: half' }).waitFor();
    expect(await kept()).toBe(0);
    expect(await outbox().getByRole('button').count()).toBe(0);
    expect(new URL(page.url()).pathname).toBe('/larder/B1');
  });

  it('shows a refused form as it was typed, with the sentence beside the field', async () => {
    await page.goto('/animals/A1');
    await measure('about so');
    const field = page.getByRole('textbox', { name: 'Leg span' }).and(page.locator('[aria-invalid=true]'));
    await field.waitFor();
    expect(await field.inputValue()).toBe('about so');
    expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await page.getByText('“about so”').or(page.getByText('"about so"')).count()).toBeGreaterThan(0);
    expect(await kept()).toBe(0);
  });

  it('keeps what is tapped while the server is away, tells it, and sends it in order', async () => {
    await page.goto('/larder/B1');
    const before = await history().count();
    await away();
    await page.getByRole('button', { name: 'A quarter', exact: true }).click();
    await eventually(() => words().textContent()).toMatch(
      /^Not sent yet: Cricket box: by eye, against full, A quarter \(\d\d:\d\d\)\. The server is away; it is kept on this device and sent as soon as it answers\.$/,
    );
    expect(await page.getByRole('button', { name: 'Half', exact: true }).count()).toBe(0);
    await page.getByText('Counted', { exact: true }).click();
    await page.getByRole('spinbutton', { name: 'Heads alive' }).fill('812');
    await page.getByRole('button', { name: 'Write down the count' }).click();
    await eventually(() => words().textContent()).toContain('and 1 more. The server is away; they are kept');
    expect(await kept()).toBe(2);
    await triedInVain();
    await back();
    await outbox().getByRole('button', { name: 'Send now' }).click();
    await eventually(() => words().textContent()).toMatch(/^Sent now: Cricket box: counted\. Nothing waits/);
    expect(await kept()).toBe(0);
    await eventually(() => history().count()).toBe(before + 2);
    const lines = await history().allTextContents();
    expect(lines[0]).toContain('Counted 812');
    expect(lines[1]).toContain('Looked: a quarter');
  });

  it('keeps it over a reload, and sends it once though two tabs and a lost answer try', async () => {
    await page.goto('/animals/A2');
    const before = await history().count();
    // The server does it, and the answer never comes.
    await context.route('**/premoult', async (route) => {
      await route.fetch();
      await route.abort('connectionreset');
    });
    await page.getByRole('button', { name: 'In premoult', exact: true }).click();
    await eventually(() => words().textContent()).toContain('Not sent yet: Sling A-02: in premoult');
    await context.unroute('**/premoult');
    const other = await context.newPage();
    await Promise.all([page.reload(), other.goto('/animals/A2')]);
    await eventually(() => kept()).toBe(0);
    await page.reload();
    expect(await history().count()).toBe(before + 1);
  });

  it('does not lose what is refused later: it can be opened, put right, and thrown away', async () => {
    await page.goto('/animals/A3');
    await away();
    await measure('much bigger');
    await eventually(() => words().textContent()).toContain('Not sent yet: Sling A-03: measured');
    await back();
    await outbox().getByRole('button', { name: 'Send now' }).click();
    const line = outbox().getByRole('listitem');
    await line.waitFor();
    expect(await line.textContent()).toMatch(/^Not written down: Sling A-03: measured \(\d\d:\d\d\)\./);
    await page.goto('/larder');
    await line.getByRole('button', { name: 'Open it' }).click();
    const field = page.locator('[aria-invalid=true]');
    await field.waitFor();
    expect(await field.inputValue()).toBe('much bigger');
    await eventually(() => field.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await kept()).toBe(1);
    await page.goto('/larder');
    await line.getByRole('button', { name: 'Throw it away' }).click();
    await line.getByRole('button', { name: 'Keep it' }).click();
    await line.getByRole('button', { name: 'Open it' }).click();
    await field.fill('14 mm');
    await measured().click();
    await history().filter({ hasText: 'measured: 14' }).waitFor();
    expect(await kept()).toBe(0);
  });

  it('throws away only what it is told twice to', async () => {
    await page.goto('/animals/A3');
    await away();
    await measure('huge');
    await outbox().getByRole('button', { name: 'Send now' }).waitFor();
    await back();
    await outbox().getByRole('button', { name: 'Send now' }).click();
    await outbox().getByRole('button', { name: 'Throw it away' }).click();
    expect(await kept()).toBe(1);
    await outbox().getByRole('button', { name: 'Yes, throw it away' }).click();
    expect(await kept()).toBe(0);
    expect(await outbox().getByRole('listitem').count()).toBe(0);
  });

  it('says so when the device keeps nothing, and leaves the form as it is', async () => {
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await page.goto('/animals/A3');
    await away();
    await measure('13 mm');
    await eventually(() => words().textContent()).toContain('this device keeps nothing');
    await back();
    await measured().click();
    await history().filter({ hasText: 'measured: 13' }).waitFor();
  });

  it('sends by itself when the network is back', async () => {
    await page.goto('/larder/B2');
    await away();
    await page.getByRole('button', { name: 'Full' }).click();
    await eventually(() => words().textContent()).toContain('Not sent yet');
    await back();
    await page.evaluate(() => window.dispatchEvent(new Event('online')));
    await history().filter({ hasText: 'looked: full' }).waitFor();
    expect(await kept()).toBe(0);
  });

  it('keeps what is sent after the login has run out, and sends it after the next', async () => {
    const locked = join(folder, 'locked.db');
    await furnishEvening(locked, { shelves: ['A'], animalsPerShelf: 1 });
    const shut = await startProgram({ database: locked, password: 'eight legs good' });
    const visitor = await browser.newContext({ viewport: PHONE, baseURL: shut.address });
    try {
      const own = await visitor.newPage();
      own.setDefaultTimeout(20_000);
      const logIn = async () => {
        await own.getByLabel('Password').fill('eight legs good');
        await own.getByRole('button', { name: 'Come in' }).click();
        await own.getByRole('heading', { name: 'Cricket box' }).waitFor();
      };
      await own.goto('/larder/B1');
      await logIn();
      const session = (await visitor.cookies()).filter(({ name }) => name.endsWith('session'));
      expect(session).toHaveLength(1);
      await visitor.clearCookies();
      await own.getByRole('button', { name: 'Full', exact: true }).click();
      await eventually(() => words(own).textContent()).toMatch(
        /You are logged out; it is kept on this device/,
      );
      await own.goto('/larder/B1');
      await logIn();
      await history(own).filter({ hasText: 'Looked: full' }).waitFor();
      expect(await kept(own)).toBe(0);
    } finally {
      await visitor.close();
      await shut.stop();
    }
  });
});
