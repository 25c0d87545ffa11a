/** Connections of one database: each is checked for the promises it must keep before it is used. */
import { type Client, createClient } from '@libsql/client';

/** Where a database lives, and the token of a server. */
export interface Place {
  readonly url: string;
  readonly authToken?: string | undefined;
}

/** Waiting for a lock freezes the whole program, so the wait inside is short and the retry is outside. */
const LOCK_WAIT_MS = 50;
const SYNCHRONOUS_FULL = 2;

export const isFile = (place: Place): boolean => place.url.startsWith('file:');

/** One connection, so that what is set on it stays set. */
export const connect = (place: Place): Client =>
  createClient({
    url: place.url,
    concurrency: 1,
    timeout: LOCK_WAIT_MS,
    intMode: 'number',
    ...(place.authToken === undefined ? {} : { authToken: place.authToken }),
  });

/** Sets and checks write-ahead log, full synchronisation and foreign keys on a local connection. */
export async function keepPromises(client: Client, place: Place): Promise<void> {
  if (!isFile(place)) return;
  await client.execute('PRAGMA foreign_keys = on');
  await client.execute('PRAGMA synchronous = full');
  await expectPragma(client, 'journal_mode = wal', 'wal');
  await expectPragma(client, 'foreign_keys', 1);
  await expectPragma(client, 'synchronous', SYNCHRONOUS_FULL);
}

async function expectPragma(client: Client, pragma: string, wanted: string | number): Promise<void> {
  const { rows } = await client.execute(`PRAGMA ${pragma}`);
  const found = rows[0]?.[0];
  if (found !== wanted) throw new Error(`PRAGMA ${pragma} answered ${String(found)}, expected ${wanted}`);
}
