/** The keeper's evening in a real browser: 150 animals with 15 exceptions, in few taps, with the server away in between. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isBuilt, startProgram } from '../support/built-program.ts';
import { launchChromium } from '../support/chromium.ts';
import { furnishEvening, journalOf, roomIn } from '../support/evening-room.ts';
import { type Keeper, keeperAt, rowOf, type Shown, shelf, shownOn } from '../support/keeper.ts';

/** What must hold before long, on a busy machine too. */
const eventually = <T>(read: () => T) => expect.poll(read, { timeout: 20_000 });
const PHONE = { width: 390, height: 844 };
const folder = mkdtempSync(join(tmpdir(), 'preylarder-round-'));
let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

/**
 * Seconds of a keeper who knows the page, by the keystroke-level model (S. K. Card, T. P. Moran, A. Newell, "The
 * keystroke-level model for user performance time with interactive systems", Communications of the ACM 23 (7),
 * 1980, 396-410): P, point at a target, 1.10 s; K, press it, 0.20 s; M, prepare mentally, 1.35 s, here once for
 * each exception and once for each button that ends a shelf. Their P is a mouse's; a thumb on a near target is
 * taken to be no slower. The look at a row that is as proposed, 0.35 s, is an assumption of ours: the model has
 * no operator for reading.
 */
const POINT_S = 1.1;
const PRESS_S = 0.2;
const PREPARE_S = 1.35;
const LOOK_S = 0.35;

interface Effort {
  readonly taps: number;
  readonly decisions: number;
  readonly looks: number;
}

const secondsOf = ({ taps, decisions, looks }: Effort): number =>
  taps * (POINT_S + PRESS_S) + decisions * PREPARE_S + looks * LOOK_S;

type Mark = 'Not fed' | 'Premoult' | 'Moulted' | 'Died' | 'other count' | 'other bin';

/** What the journal must say of a row, given what it shows when it is sent. */
type Told = (row: Shown) => string[];

const asShown: Told = ({ animal, heads, bin }) => [`${animal} offered ${heads} ${bin}`];

/** Marks one row as a keeper does, and tells what the journal must say of it. */
async function mark({ page, tap }: Keeper, { animal, heads, bin }: Shown, what: Mark): Promise<Told> {
  const row = rowOf(page, animal);
  const one = (role: 'checkbox' | 'radio', name: string | RegExp, within = row) =>
    within.getByRole(role, { name, exact: typeof name === 'string' && role === 'radio' }).first();
  if (what === 'Not fed') {
    await tap(one('checkbox', 'Not fed'));
    return () => [`${animal} skipped`];
  }
  await tap(row.getByText('Otherwise'));
  if (what === 'other count') {
    await tap(one('radio', `${heads + 1}`, row.getByRole('group', { name: /^How many/ })));
    return (row) => asShown({ ...row, heads: heads + 1 });
  }
  if (what === 'other bin') {
    const other = one('radio', / from /, row.getByRole('group', { name: /instead$/ }));
    const [from, count] = ((await other.getAttribute('value')) ?? '').split('|');
    expect(from).not.toBe(bin);
    await tap(other);
    return () => [`${animal} offered ${count} ${from}`];
  }
  await tap(one('checkbox', what));
  const seen = `${animal} ${what.toLowerCase()}`;
  return () => (what === 'Premoult' ? [`${animal} skipped`, seen] : [seen]);
}

/** Exceptions by shelf: place in the shelf and what went otherwise. */
const EXCEPTIONS: Readonly<Record<string, readonly (readonly [number, Mark])[]>> = {
  'Shelf A': [
    [2, 'Not fed'],
    [9, 'Not fed'],
    [20, 'Premoult'],
  ],
  'Shelf B': [
    [0, 'Not fed'],
    [12, 'Moulted'],
    [24, 'Not fed'],
  ],
  'Shelf C': [
    [5, 'other bin'],
    [6, 'other count'],
  ],
  'Shelf D': [
    [3, 'Not fed'],
    [4, 'Not fed'],
    [21, 'Premoult'],
  ],
  'Shelf E': [
    [7, 'Died'],
    [19, 'other count'],
  ],
  'Shelf F': [
    [10, 'Not fed'],
    [11, 'Moulted'],
  ],
};

const words = (page: Page) => page.getByRole('region', { name: 'Kept on this device' }).getByRole('status');
const left = (page: Page) => page.locator('.serving:visible').count();
const shelfDone = (page: Page, name: string) =>
  shelf(page, name).getByRole('button', { name: 'This shelf is done' });

describe.skipIf(!isBuilt())(
  'the round of 150 animals with 15 exceptions (the program must have been built)',
  () => {
    it('takes at most 45 taps and three minutes, outlives a server that is away, and is undone', async () => {
      const database = join(folder, 'evening.db');
      await furnishEvening(database, { shelves: ['A', 'B', 'C', 'D', 'E', 'F'], animalsPerShelf: 25 });
      const before = await roomIn(database);
      let program = await startProgram({ database });
      try {
        const context = await browser.newContext({
          viewport: PHONE,
          baseURL: program.address,
          hasTouch: true,
        });
        const page = await context.newPage();
        page.setDefaultTimeout(20_000);
        const keeper = keeperAt(page);
        await page.goto('/tonight');
        const shown = await shownOn(page);
        expect(shown.length).toBe(150);
        expect(new Set(shown.map((row) => row.shelf)).size).toBe(6);

        const otherwise = new Map<string, Told>();
        const told: string[] = [];
        const rowsOn = async (name: string) => (await shownOn(page)).filter((row) => row.shelf === name);
        const markShelf = async (name: string) => {
          const rows = await rowsOn(name);
          for (const [at, what] of EXCEPTIONS[name] ?? [])
            otherwise.set(rows[at]!.animal, await mark(keeper, rows[at]!, what));
        };
        const endShelf = async (name: string, button = shelfDone(page, name)) => {
          for (const row of await rowsOn(name)) told.push(...(otherwise.get(row.animal) ?? asShown)(row));
          await keeper.tap(button);
        };

        for (const [name, remain] of [
          ['Shelf A', 125],
          ['Shelf B', 100],
        ] as const) {
          await markShelf(name);
          await endShelf(name);
          await eventually(() => left(page)).toBe(remain);
        }

        await program.stop();
        await markShelf('Shelf C');
        await endShelf('Shelf C');
        await eventually(() => words(page).textContent()).toMatch(
          /^Not sent yet: tonight['’]s round, Shelf C \(\d\d:\d\d\)\. The server is away; it is kept on this device/,
        );
        await markShelf('Shelf D');
        await endShelf('Shelf D');
        await eventually(() => words(page).textContent()).toContain('Shelf D');
        await eventually(() => left(page)).toBe(50);
        await markShelf('Shelf E');
        program = await startProgram({ database, port: program.port });
        await page.reload();
        await eventually(() =>
          page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('outbox')).length),
        ).toBe(0);
        await eventually(() => page.getByRole('region', { name: /^Shelf [CD]$/ }).count()).toBe(0);
        expect(await left(page)).toBe(50);

        await endShelf('Shelf E');
        await eventually(() => left(page)).toBe(25);
        await markShelf('Shelf F');
        await endShelf('Shelf F', page.getByRole('button', { name: 'Everyone else got theirs' }));
        await page.getByRole('heading', { level: 1, name: /is written down|Nobody is due/ }).waitFor();

        expect(otherwise.size).toBe(15);
        expect(keeper.taps()).toBeLessThanOrEqual(45);
        const effort = { taps: keeper.taps(), decisions: 15 + 6, looks: 150 - 15 };
        expect(secondsOf(effort)).toBeLessThanOrEqual(180);

        expect((await journalOf(database)).toSorted()).toEqual(told.toSorted());

        await undoEvening(page);
        expect(await journalOf(database)).toEqual([]);
        expect(await roomIn(database)).toEqual(before);
        await page.goto('/tonight');
        expect(await shownOn(page)).toEqual(shown);
        await context.close();
      } finally {
        await program.stop();
      }
    }, 120_000);
  },
);

/** Six sendings of one evening are one step to undo. */
async function undoEvening(page: Page): Promise<void> {
  const answered = page.waitForEvent('load');
  await page.getByRole('complementary', { name: 'Notices' }).getByRole('button', { name: /^Undo/ }).click();
  await answered;
}
