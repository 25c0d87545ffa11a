/** Every page by the rules of WCAG 2.2 AA, as axe-core knows them, in each of the lights. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { pages } from '../support/view-pages.tsx';
import { serveViews, type ViewServer } from '../support/view-server.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
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

/** What axe finds wrong on the page open, each as 'rule: element', and how many of its rules held. */
async function judged(path: string): Promise<{ wrong: string[]; held: number }> {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(`${server.origin}/${path}`);
  await page.evaluate(AXE);
  const found = (await page.evaluate(
    `axe.run(document, { runOnly: ${JSON.stringify(RULES)}, resultTypes: ['violations'] })`,
  )) as AxeResults;
  await page.close();
  const wrong = found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
  );
  return { wrong, held: found.passes.length };
}

describe.each(['light', 'dark', 'red'])('in the %s light', (theme) => {
  it.each(Object.keys(pages('light')))('%s breaks no rule', async (name) => {
    const { wrong, held } = await judged(`${name}?theme=${theme}`);
    expect(wrong).toEqual([]);
    expect(held).toBeGreaterThan(10);
  });
});

it('a fault would be seen', async () => {
  const page = await browser.newPage();
  await page.setContent('<html><body><img src="x.png"><input></body></html>');
  await page.evaluate(AXE);
  const found = (await page.evaluate('axe.run(document)')) as AxeResults;
  expect(found.violations.map(({ id }) => id)).toEqual(expect.arrayContaining(['image-alt', 'label']));
  await page.close();
});
