/** A real database for each test: a fresh temporary file, or the server the environment names. */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { onTestFinished } from 'vitest';
import type { Result } from '../../src/husbandry/result.ts';
import { openStore, type Store } from '../../src/store/index.ts';
import { MOMENT, type Room, roomOn, TODAY } from './room-clock.ts';

export { MOMENT, type Room, TODAY };

/** Memory that is written like a disk, where there is such a thing. */
const IN_MEMORY = '/dev/shm';

/** The same as any store, in memory where that can be: for tests of thousands of writes. */
export const quickStore = (): Promise<Store> =>
  freshStore(urlOf(join(freshFolder(existsSync(IN_MEMORY) ? IN_MEMORY : tmpdir()), 'larder.db')));

/** A folder that is gone after the test. */
export function freshFolder(place = tmpdir()): string {
  const folder = mkdtempSync(join(place, 'preylarder-test-'));
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

/** A context whose clock stands until it is moved. */
export const freshContext = async (store?: Store): Promise<Room> => roomOn(store ?? (await freshStore()));
