/** Every page by the rules of WCAG 2.2 AA, as axe-core knows them, in each of the lights. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { pages } from '../support/view-pages.tsx';
import { serveViews, type ViewServer } from '../support/view-server.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** By day and by night every rule; by red light what differs there: the colours. */
const LIGHTS = [
  { theme: 'light', runOnly: RULES, least: 10 },
  { theme: 'dark', runOnly: RULES, least: 10 },
  { theme: 'red', runOnly: { type: 'rule', values: ['color-contrast'] }, least: 1 },
];
let server: ViewServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  server = await serveViews();
  browser = await launchChromium();
  page = await browser.newPage({ viewport: { width: 390, height: 844 } });
});
afterAll(async () => {
  await browser.close();
  await server.close();
});

/** What axe finds wrong on a page, each as 'rule: element', and how many of its rules held. */
async function judged(path: string, runOnly: unknown): Promise<{ wrong: string[]; held: number }> {
  await page.goto(`${server.origin}/${path}`);
  await page.evaluate(AXE);
  const found = (await page.evaluate(
    `axe.run(document, { runOnly: ${JSON.stringify(runOnly)}, resultTypes: ['violations'] })`,
  )) as AxeResults;
  const wrong = found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
  );
  return { wrong, held: found.passes.length };
}

describe.each(LIGHTS)('in the $theme light', ({ theme, runOnly, least }) => {
  it.each(Object.keys(pages('light')))('%s breaks no rule', async (name) => {
    const { wrong, held } = await judged(`${name}?theme=${theme}`, runOnly);
    expect(wrong).toEqual([]);
    expect(held).toBeGreaterThanOrEqual(least);
  });
});

it('a fault would be seen', async () => {
  await page.setContent('<html><body><img src="x.png"><input></body></html>');
  await page.evaluate(AXE);
  const found = (await page.evaluate('axe.run(document)')) as AxeResults;
  expect(found.violations.map(({ id }) => id)).toEqual(expect.arrayContaining(['image-alt', 'label']));
});
