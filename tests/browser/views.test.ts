/** The pages in a real browser, under the program's policy: what fits a phone, what script adds, what works without it. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { smallTargets } from '../support/targets.ts';
import { pages } from '../support/view-pages.tsx';
import { serveViews, type ViewServer } from '../support/view-server.ts';

const PHONE = { width: 390, height: 844 };
const NAMES = Object.keys(pages('light'));
let server: ViewServer;
let browser: Browser;

beforeAll(async () => {
  server = await serveViews();
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  await server.close();
});

/** Opens a page and tells afterwards what its console said. */
async function open(name: string, { script = true } = {}) {
  const page = await browser.newPage({ viewport: PHONE, javaScriptEnabled: script });
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  await page.goto(`${server.origin}/${name}`);
  return { page, said };
}

const checkedMarks = (page: Page) =>
  page
    .locator('.round-form input:checked:not([value=""])')
    .evaluateAll((boxes) =>
      boxes.map((box) => `${(box as HTMLInputElement).name} ${(box as HTMLInputElement).value}`),
    );

/** What a browser says of an answer that a page copes with. */
const BUSY = 'status of 503';

/** In CSS pixels: the smallest phone, a phone, a desk at a zoom of 200 %, a desk. */
const WIDTHS = [320, 390, 640, 1280];

it.each(NAMES)(
  '%s fits every width, has targets for a finger, and breaks no rule of the policy',
  async (name) => {
    const { page, said } = await open(name);
    for (const width of WIDTHS) {
      await page.setViewportSize({ ...PHONE, width });
      const needed = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(needed, `at ${width} px`).toBeLessThanOrEqual(width);
      expect(await smallTargets(page, 24), `at ${width} px`).toEqual([]);
    }
    expect(said.filter((line) => !line.includes(BUSY))).toEqual([]);
    await page.close();
  },
);

describe('a bin’s page that is shown before all is worked out', () => {
  it('gets its pictures with script, and offers them without', async () => {
    const { page } = await open('bin-soon');
    await page.getByRole('img', { name: /^Falls from/ }).waitFor();
    expect(await page.getByRole('status').filter({ hasText: 'worked out' }).count()).toBe(0);
    await page.close();
    const bare = await open('bin-soon', { script: false });
    await bare.page.getByRole('link', { name: 'Wait for them' }).click();
    await bare.page.getByRole('img', { name: /^Falls from/ }).waitFor();
    await bare.page.close();
  });
  it('stays as it is when the server is busy', async () => {
    const { page } = await open('bin-busy');
    await page.waitForLoadState('networkidle');
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toContain(
      'Roach tub: about 480 alive',
    );
    expect(await page.getByRole('link', { name: 'Wait for them' }).isVisible()).toBe(true);
    await page.close();
  });
});

describe('a phone', () => {
  it('shows verdict, act and picture on the first screen', async () => {
    const { page } = await open('sunday');
    const nav = await page.getByRole('navigation').boundingBox();
    const bottom = async (css: string) => {
      const box = await page.locator(css).boundingBox();
      return box!.y + box!.height;
    };
    for (const css of ['h1', '.act .button', '.spectrum .phone .ruler'])
      expect(await bottom(css)).toBeLessThanOrEqual(nav!.y);
    expect(await bottom('.spectrum .phone')).toBeLessThanOrEqual(nav!.y);
    await page.close();
  });

  it('draws every kind of prey in its own colour', async () => {
    const { page } = await open('sunday');
    const fills = await page
      .locator('.spectrum .phone .layer')
      .evaluateAll((layers) => layers.map((layer) => getComputedStyle(layer).fill));
    expect(fills.length).toBeGreaterThan(1);
    expect(fills).not.toContain('rgb(0, 0, 0)');
    await page.close();
  });

  it.each(['tonight', 'morning'])('has targets of 60 px for the rows and buttons of %s', async (name) => {
    const { page } = await open(name);
    for (const summary of await page.locator('.serving summary').all()) await summary.click();
    expect(await page.locator('.round-form input:visible').count()).toBeGreaterThan(3);
    expect(await smallTargets(page, 60, '.round-form :is(.serving, .shelf-done, .closing)')).toEqual([]);
    await page.close();
  });
});

describe('the round', () => {
  it('is marked by taps on words a keeper reads, without script', async () => {
    const { page } = await open('tonight', { script: false });
    await page.getByLabel('Not fed (Mr Wick)').check();
    await page.getByText('Otherwise (Duchess)').click();
    await page.getByLabel('Premoult (Duchess)').check();
    expect(await checkedMarks(page)).toEqual(['notFed A2', 'premoult A3']);
    await page.close();
  });

  it('keeps its marks over a reload until it is sent', async () => {
    const { page } = await open('tonight');
    await page.getByLabel('Not fed (Mr Wick)').check();
    await page.reload();
    expect(await checkedMarks(page)).toEqual(['notFed A2']);
    const answered = page.waitForResponse((response) => response.request().method() === 'POST');
    await page.getByRole('button', { name: 'Everyone else got theirs' }).click();
    await answered;
    await page.goto(`${server.origin}/tonight`);
    expect(await checkedMarks(page)).toEqual([]);
    await page.close();
  });

  it('is sent once however often its button is tapped', async () => {
    const before = server.posted.length;
    const { page } = await open('tonight');
    const answered = page.waitForResponse((response) => response.request().method() === 'POST');
    await page.getByRole('button', { name: 'Everyone else got theirs' }).dblclick();
    await answered;
    expect(server.posted.slice(before)).toEqual(['/tonight']);
    await page.close();
  });
});

describe('the sheet of labels', () => {
  it('is printed on its own, in true millimetres, with nothing cut off', async () => {
    const { page } = await open('labels-sheet');
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    expect(pdf).toMatch(/MediaBox\s*\[0 0 594\.\d+ 841\.\d+\]/);
    await page.emulateMedia({ media: 'print' });
    const labels = await page.locator('.label').evaluateAll((all) =>
      all.map((label) => {
        const { x, y, width, height } = label.getBoundingClientRect();
        const isCut = label.scrollHeight > label.clientHeight || label.scrollWidth > label.clientWidth;
        return { mm: [x, y, width, height].map((px) => Math.round((px * 25.4) / 96)), isCut };
      }),
    );
    expect(labels.map(({ mm }) => mm)).toEqual([
      [120, 0, 60, 35],
      [0, 35, 60, 35],
      [60, 35, 60, 35],
      [120, 35, 60, 35],
    ]);
    expect(labels.filter(({ isCut }) => isCut)).toEqual([]);
    await page.close();
  });
});

describe('the keyboard', () => {
  it('goes to the undo with u', async () => {
    const { page } = await open('tonight');
    await page.keyboard.press('u');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('undo-last');
    await page.close();
  });

  it('goes to the search with /, and finds while one types', async () => {
    const { page, said } = await open('animals');
    await page.keyboard.press('/');
    await page.keyboard.type('tansy');
    await page.getByText('1 of 5 found: matching “tansy”.').waitFor();
    expect(await page.getByRole('link', { name: 'Hazel' }).count()).toBe(0);
    expect(said).toEqual([]);
    await page.close();
  });
});
