/** Sheets as they come out of a printer: as many pages as there are rows for, no row cut, the date on each. */
import type { Hono } from 'hono';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { importRows } from '../../src/actions/index.ts';
import type { DoorEnv } from '../../src/web/index.ts';
import { launchChromium } from '../support/chromium.ts';
import { filledHome } from '../support/house.ts';
import { good } from '../support/store-at.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const ANIMALS = 150;

/** 148 more animals on ten shelves, all hungry for two weeks. */
async function bigHome(): Promise<Hono<DoorEnv>> {
  const { room, app } = await filledHome();
  const animals = Array.from({ length: ANIMALS - 2 }, (_, at) => ({
    name: `Sling ${at + 1}`,
    kind: 'brachypelma-hamorii',
    gaugeMm: 12 + (at % 9),
    room: 'R1',
    shelf: `Rack ${1 + Math.floor(at / 15)}`,
    lastFed: room.date(-14),
  }));
  good(await importRows(room, { animals: { new: animals, changed: [] } }));
  return app;
}

/** A page that is answered by the program itself, without a port. */
async function openIn(app: Hono<DoorEnv>, path: string, javaScriptEnabled = true): Promise<Page> {
  const context = await browser.newContext({
    baseURL: 'http://localhost',
    bypassCSP: true,
    javaScriptEnabled,
  });
  const page = await context.newPage();
  await page.route('**/*', async (route) => {
    const answer = await app.request(route.request().url());
    await route.fulfill({
      status: answer.status,
      headers: Object.fromEntries(answer.headers),
      body: Buffer.from(await answer.arrayBuffer()),
    });
  });
  await page.goto(path);
  return page;
}

const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

const MM = 96 / 25.4;
const MARGINS = { across: 22, along: 25 };
const FORMATS = [
  { format: 'A4', width: 210, height: 297 },
  { format: 'Letter', width: 215.9, height: 279.4 },
] as const;

/** Lays the printed page out in columns of a page's size: Chromium breaks both alike. Tells how many, and which rows are cut. */
async function brokenLike(page: Page, { width, height }: (typeof FORMATS)[number]) {
  await page.emulateMedia({ media: 'print' });
  await page.addStyleTag({
    content: `main.paper-sheet { width: ${(width - MARGINS.across) * MM}px; height: ${(height - MARGINS.along) * MM}px;
      columns: ${(width - MARGINS.across) * MM}px; column-fill: auto; column-gap: 0; }`,
  });
  return page.evaluate(() => {
    const rows = [...document.querySelectorAll('tbody tr')];
    const columnOf = (row: Element) => Math.round(row.getBoundingClientRect().left);
    return {
      rows: rows.filter((row) => row.querySelector('.sheet-code') !== null).length,
      cut: rows.filter((row) => row.getClientRects().length > 1).map((row) => row.textContent),
      columns: new Set(rows.map(columnOf)).size,
      alone: rows.filter(
        (row) =>
          row.matches('.sheet-shelf') &&
          row.nextElementSibling !== null &&
          columnOf(row) !== columnOf(row.nextElementSibling),
      ).length,
    };
  });
}

test.each(FORMATS)(
  '150 animals come out on $format as many pages as they fill, with no row cut and no shelf parted from its first row',
  async (paper) => {
    const app = await bigHome();
    for (const [path, least, most] of [
      ['/tonight/sheet', 5, 8],
      ['/tonight/sheet?blank=1&days=7', 5, 6],
    ] as const) {
      const page = await openIn(app, path);
      const pdf = await page.pdf({ format: paper.format });
      const broken = await brokenLike(page, paper);
      expect(broken.rows).toBe(ANIMALS);
      expect(broken.cut).toEqual([]);
      expect(broken.alone).toBe(0);
      expect(pagesOf(pdf)).toBe(broken.columns);
      expect(pagesOf(pdf)).toBeGreaterThanOrEqual(least);
      expect(pagesOf(pdf)).toBeLessThanOrEqual(most);
      await page.context().close();
    }
  },
  60_000,
);

test('the button that prints stands there only with script, and Enter in a cell goes on to the next', async () => {
  const app = await bigHome();
  for (const script of [true, false]) {
    const sheet = await openIn(app, '/tonight/sheet', script);
    expect(await sheet.getByRole('button', { name: 'Print' }).isVisible()).toBe(script);
    await sheet.context().close();
  }
  const keyIn = await openIn(app, '/tonight/key-in?day=2024-10-04');
  const cells = keyIn.locator('.key-cell');
  await cells.nth(0).focus();
  await keyIn.keyboard.type('0');
  await keyIn.keyboard.press('Enter');
  await keyIn.keyboard.type('p');
  await keyIn.keyboard.press('ArrowDown');
  await keyIn.keyboard.press('ArrowUp');
  expect(await cells.nth(0).inputValue()).toBe('0');
  expect(await cells.nth(1).inputValue()).toBe('p');
  expect(await keyIn.evaluate(() => document.activeElement?.getAttribute('name'))).toBe(
    await cells.nth(1).getAttribute('name'),
  );
  await keyIn.context().close();
});
