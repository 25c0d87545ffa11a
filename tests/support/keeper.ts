/** A keeper with a browser: taps are counted, and a round is marked by the words on its buttons. */
import type { Locator, Page } from 'playwright-core';

export interface Keeper {
  readonly page: Page;
  /** Taps once, and counts it. */
  readonly tap: (what: Locator) => Promise<void>;
  readonly taps: () => number;
}

export function keeperAt(page: Page): Keeper {
  let taps = 0;
  const tap = async (what: Locator) => {
    taps += 1;
    await what.click();
  };
  return { page, tap, taps: () => taps };
}

export const shelf = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });

export const rowOf = (page: Page, animal: string): Locator =>
  page.getByRole('listitem').filter({ has: page.locator(`input[name=animal][value=${animal}]`) });

export interface Shown {
  readonly animal: string;
  readonly shelf: string;
  readonly bin: string;
  readonly heads: number;
}

/** What each row of the round proposes. */
export const shownOn = (page: Page): Promise<readonly Shown[]> =>
  page.locator('.serving').evaluateAll((rows) =>
    rows.map((row) => {
      const textIn = (name: string) =>
        row.querySelector<HTMLInputElement>(`input[name^="${name}"]`)?.value ?? '';
      const [bin = '', heads = ''] = textIn('offer:').split('|');
      const at = row.closest('section')?.getAttribute('aria-label') ?? '';
      return { animal: textIn('animal'), shelf: at, bin, heads: Number(heads) };
    }),
  );
