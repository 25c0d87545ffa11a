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
  /** Moves the clock by seconds within the day. */
  readonly passSeconds: (seconds: number) => void;
  /** The civil date so many days from now. */
  readonly date: (days: number) => string;
}

const MS_PER_SECOND = 1000;
const MS_PER_DAY = 86_400 * MS_PER_SECOND;

/** A context whose clock stands until it is moved. */
export async function freshContext(store?: Store): Promise<Room> {
  let passedMs = 0;
  const today = () => TODAY + Math.floor(passedMs / MS_PER_DAY);
  const moment = () => new Date(Date.parse(MOMENT) + passedMs).toISOString();
  return {
    store: store ?? (await freshStore()),
    facts: smallFacts,
    clock: (): Now => ({ today: today(), moment: moment() }),
    pass: (days) => {
      passedMs += days * MS_PER_DAY;
    },
    passSeconds: (seconds) => {
      passedMs += seconds * MS_PER_SECOND;
    },
    date: (days) => civilDate(today() + days),
  };
}
