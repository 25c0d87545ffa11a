/** A real Chromium: the one named by CHROMIUM_PATH, or the one that comes with the packages. */
import chromium from '@sparticuz/chromium';
import { type Browser, chromium as browserType } from 'playwright-core';

export async function launchChromium(): Promise<Browser> {
  const own = process.env.CHROMIUM_PATH;
  if (own !== undefined) return browserType.launch({ executablePath: own });
  return browserType.launch({
    executablePath: await chromium.executablePath(),
    // One process for all pages dies with the first page that closes.
    args: chromium.args.filter((arg) => arg !== '--single-process'),
  });
}
