/** Draws every page from the fixtures and takes its picture: `npx tsx --tsconfig tests/tsconfig.json tests/support/shoot.ts DIR [name ...]`. */
import { readFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import chromium from '@sparticuz/chromium';
import { chromium as browserType } from 'playwright-core';
import { pages } from './view-pages.tsx';

const [folder = '/tmp/shots', ...wanted] = process.argv.slice(2);
const THEMES = ['light', 'dark', 'red'] as const;
const WIDTHS = [390, 1280];
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; form-action 'self'";

const server = createServer((request, response) => {
  const url = new URL(request.url ?? '/', 'http://127.0.0.1');
  if (url.pathname.startsWith('/assets/')) {
    const type = url.pathname.endsWith('.css') ? 'text/css' : 'text/javascript';
    const file = new URL(`../../views${url.pathname}`, import.meta.url);
    response.setHeader('content-type', type);
    response.end(url.pathname === '/assets/htmx.js' ? '' : readFileSync(file));
    return;
  }
  const theme = THEMES.find((name) => name === url.searchParams.get('theme')) ?? 'light';
  response.setHeader('content-type', 'text/html; charset=utf-8');
  response.setHeader('content-security-policy', POLICY);
  response.end(pages(theme)[url.pathname.slice(1)] ?? 'no such page');
});

await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
const { port } = server.address() as AddressInfo;
await mkdir(folder, { recursive: true });
const browser = await browserType.launch({
  executablePath: await chromium.executablePath(),
  // One process for all pages dies with the first page that closes.
  args: chromium.args.filter((arg) => arg !== '--single-process'),
  headless: true,
});
for (const name of Object.keys(pages('light')).filter(
  (page) => wanted.length === 0 || wanted.includes(page),
)) {
  for (const theme of THEMES) {
    for (const width of WIDTHS) {
      const page = await browser.newPage({ viewport: { width, height: width < 500 ? 844 : 800 } });
      page.on('console', (message) => console.log(name, theme, width, message.text()));
      page.on('pageerror', (error) => console.log(name, error.message));
      await page.goto(`http://127.0.0.1:${port}/${name}?theme=${theme}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      if (wide > width) console.log(name, theme, `${wide} px wide on ${width}`);
      await page.screenshot({ path: `${folder}/${name}-${theme}-${width}.png`, fullPage: true });
      if (width < 500) await page.screenshot({ path: `${folder}/${name}-${theme}-${width}-top.png` });
      await page.evaluate(() => {
        for (const details of document.querySelectorAll('details')) details.open = true;
      });
      await page.screenshot({ path: `${folder}/${name}-${theme}-${width}-open.png`, fullPage: true });
      if (theme === 'dark' && width > 500) await page.pdf({ path: `${folder}/${name}.pdf`, format: 'A4' });
      await page.close();
    }
  }
}
await browser.close();
server.close();
