/** The store: one writer behind a queue, one reader beside it, transactions that are whole or nothing. */
import { setTimeout as pause } from 'node:timers/promises';
import type { Client, Transaction } from '@libsql/client';
import { err, type Result } from '../husbandry/result.ts';
import { connect, isFile, keepPromises, type Place } from './connection.ts';
import type { Query, Tx } from './query.ts';
import { isBusy, troubleOf } from './trouble.ts';

type Answers<Q extends Readonly<Record<string, Query<unknown>>>> = {
  readonly [Name in keyof Q]: Q[Name] extends Query<infer T> ? T : never;
};

export interface Store {
  readonly place: Place;
  /** Answers one question. */
  readonly ask: <T>(query: Query<T>) => Promise<T>;
  /** Answers several questions from one and the same state of the database. */
  readonly askAll: <Q extends Readonly<Record<string, Query<unknown>>>>(queries: Q) => Promise<Answers<Q>>;
  /** Runs the work in one write transaction; a Problem or an error leaves everything as it was. */
  readonly write: <T>(work: (tx: Tx) => Promise<Result<T>>) => Promise<Result<T>>;
  readonly close: () => Promise<void>;
}

const BUSY_FOR_MS = 5000;
const RETRY_AFTER_MS = 60;

/** Opens the connections of a database that has been found sound. */
export async function connectStore(place: Place): Promise<Store> {
  const writer = connect(place);
  await keepPromises(writer, place);
  const reader = connect(place);
  await keepPromises(reader, place);
  const queue = serially();
  return {
    place,
    ask: async (query) => query.decode((await reader.execute({ sql: query.sql, args: query.args })).rows),
    askAll: (queries) => askTogether(reader, queries),
    write: (work) => queue(() => writeWhole(writer, place, work)),
    close: () => queue(() => closeBoth(writer, reader, place)),
  };
}

/** A queue that runs one piece of work after another. */
function serially(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(work, work);
    last = next.catch(() => undefined);
    return next;
  };
}

async function askTogether<Q extends Readonly<Record<string, Query<unknown>>>>(
  reader: Client,
  queries: Q,
): Promise<Answers<Q>> {
  const names = Object.keys(queries);
  const statements = Object.values(queries).map(({ sql, args }) => ({ sql, args }));
  const results = await reader.batch(statements, 'read');
  const answers = names.map((name, at) => [name, queries[name]!.decode(results[at]!.rows)]);
  return Object.fromEntries(answers) as Answers<Q>;
}

async function writeWhole<T>(
  writer: Client,
  place: Place,
  work: (tx: Tx) => Promise<Result<T>>,
): Promise<Result<T>> {
  const until = performance.now() + BUSY_FOR_MS;
  for (;;) {
    try {
      return await writeOnce(writer, work);
    } catch (error) {
      await reconnect(writer, place);
      if (!isBusy(error) || performance.now() > until) return err(troubleOf(error));
      await pause(RETRY_AFTER_MS);
    }
  }
}

async function writeOnce<T>(writer: Client, work: (tx: Tx) => Promise<Result<T>>): Promise<Result<T>> {
  const transaction = await writer.transaction('write');
  try {
    const result = await work(within(transaction));
    if (result.ok) await transaction.commit();
    return result;
  } finally {
    transaction.close();
  }
}

const within = (transaction: Transaction): Tx => ({
  ask: async (query) => query.decode((await transaction.execute({ sql: query.sql, args: query.args })).rows),
  run: async (sql, args = []) => {
    await transaction.execute({ sql, args });
  },
});

/** After a failed write the connection is not to be trusted: a fresh one takes its place. */
async function reconnect(writer: Client, place: Place): Promise<void> {
  await writer.reconnect();
  try {
    await keepPromises(writer, place);
  } catch (error) {
    if (!isBusy(error)) throw error;
  }
}

async function closeBoth(writer: Client, reader: Client, place: Place): Promise<void> {
  reader.close();
  if (isFile(place)) await writer.execute('PRAGMA wal_checkpoint(truncate)').catch(() => undefined);
  writer.close();
}
