/** Takes a picture of every page: `npx tsx --tsconfig tests/tsconfig.json tests/support/shoot.ts DIR [name ...]`. */
import { mkdir } from 'node:fs/promises';
import { launchChromium } from './chromium.ts';
import { pages } from './view-pages.tsx';
import { serveViews } from './view-server.ts';

const [folder = 'shots', ...wanted] = process.argv.slice(2);
const THEMES = ['light', 'dark', 'red'] as const;
const SCREENS = [
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
];

const server = await serveViews();
await mkdir(folder, { recursive: true });
const browser = await launchChromium();
for (const name of Object.keys(pages('light')).filter(
  (page) => wanted.length === 0 || wanted.includes(page),
)) {
  for (const theme of THEMES) {
    for (const viewport of SCREENS) {
      const page = await browser.newPage({ viewport });
      page.on('console', (message) => console.log(name, theme, viewport.width, message.text()));
      page.on('pageerror', (error) => console.log(name, error.message));
      await page.goto(`${server.origin}/${name}?theme=${theme}`);
      const file = `${folder}/${name}-${theme}-${viewport.width}`;
      await page.screenshot({ path: `${file}-first.png` });
      await page.screenshot({ path: `${file}.png`, fullPage: true });
      await page.close();
    }
  }
}
await browser.close();
await server.close();
