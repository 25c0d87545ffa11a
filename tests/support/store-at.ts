/** A real database for each test: a fresh temporary file, or the server the environment names. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { onTestFinished } from 'vitest';
import type { Context, Now } from '../../src/actions/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import type { Result } from '../../src/husbandry/result.ts';
import { openStore, type Store } from '../../src/store/index.ts';
import { smallFacts } from './small-facts.ts';

/** The day the tests begin on: Friday 2024-10-04. */
export const TODAY = 20_000;
export const MOMENT = '2024-10-04T20:00:00.000Z';

/** A folder that is gone after the test. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'preylarder-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export const urlOf = (file: string): string => pathToFileURL(file).href;

/** The value of a Result that must be good. */
export function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.code}: ${result.problem.sentence}`);
  return result.value;
}

/** An open store that closes after the test. */
export async function freshStore(
  url = process.env.PREYLARDER_TEST_DB_URL ?? urlOf(join(freshFolder(), 'larder.db')),
): Promise<Store> {
  const store = good(await openStore({ place: { url }, moment: MOMENT }));
  onTestFinished(() => store.close());
  return store;
}

export interface Room extends Context {
  /** Moves the clock by days. */
  readonly pass: (days: number) => void;
  /** The civil date so many days from now. */
  readonly date: (days: number) => string;
}

/** A context whose clock stands until it is moved. */
export async function freshContext(store?: Store): Promise<Room> {
  let today = TODAY;
  const clock = (): Now => ({ today, evening: today, moment: MOMENT });
  const pass = (days: number): void => {
    today += days;
  };
  return {
    store: store ?? (await freshStore()),
    facts: smallFacts,
    clock,
    pass,
    date: (days) => civilDate(today + days),
  };
}
