/** Opens a database: looks whether it is sound, copies it before its schema grows, and connects. */
import { existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Client } from '@libsql/client';
import type { Problem } from '../husbandry/problems.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { takeBackup } from './backup.ts';
import { connect, isFile, keepPromises, type Place } from './connection.ts';
import { migrations } from './migrations/index.ts';
import type { Migration } from './migrations/migration.ts';
import { mark, refusal, whyUnsound } from './soundness.ts';
import { connectStore, type Store } from './store.ts';
import { troubleOf } from './trouble.ts';

export interface Opening {
  readonly place: Place;
  /** The moment, ISO 8601, that names a copy made before the schema grows. */
  readonly moment: string;
  /** Steps of the schema, oldest first. */
  readonly steps?: readonly Migration[];
}

/** The store at a place, or why it must not be opened. */
export async function openStore({ place, moment, steps = migrations }: Opening): Promise<Result<Store>> {
  const file = isFile(place) ? fileURLToPath(new URL(place.url)) : null;
  if (file !== null) {
    mkdirSync(dirname(file), { recursive: true });
    const unsound = await whyUnsound(file);
    if (unsound !== null) return err(unsound);
  }
  const hadContent = file !== null && existsSync(file) && statSync(file).size > 0;
  try {
    const grown = await growSchema({ place, file: hadContent ? file : null, moment, steps });
    if (grown !== null) return err(grown);
    if (file !== null) mark(file);
    return ok(await connectStore(place));
  } catch (error) {
    return err(troubleOf(error));
  }
}

interface Growing {
  readonly place: Place;
  /** Null when there is nothing to copy. */
  readonly file: string | null;
  readonly moment: string;
  readonly steps: readonly Migration[];
}

async function growSchema({ place, file, moment, steps }: Growing): Promise<Problem | null> {
  const client = connect(place);
  try {
    const version = await versionOf(client);
    const newest = steps.at(-1)?.version ?? 0;
    if (version === null) return foreign(file, place);
    if (version > newest) return tooNew(file, version, newest);
    const ahead = steps.filter((step) => step.version > version);
    if (ahead.length === 0) return null;
    const copy = file === null ? ok('') : await takeBackup(client, file, moment);
    if (!copy.ok) return copy.problem;
    await keepPromises(client, place);
    for (const step of ahead) await take(client, step);
    return null;
  } finally {
    client.close();
  }
}

/** The schema's number: 0 for an empty database, null for one that is not ours. */
async function versionOf(client: Client): Promise<number | null> {
  const { rows } = await client.execute("select name from sqlite_master where type = 'table'");
  const tables = rows.map((row) => String(row.name)).filter((name) => !name.startsWith('sqlite_'));
  if (tables.length === 0) return 0;
  if (!tables.includes('schema_version')) return null;
  const found = await client.execute('select version from schema_version');
  return Number(found.rows[0]?.version ?? 0);
}

/** One step, whole or not at all. */
const take = (client: Client, step: Migration) =>
  client.batch(
    [
      'create table if not exists schema_version (version integer not null) strict',
      ...step.statements,
      'delete from schema_version',
      { sql: 'insert into schema_version (version) values (?)', args: [step.version] },
    ],
    'write',
  );

const foreign = (file: string | null, place: Place): Promise<Problem> | Problem =>
  said(
    file,
    'database-foreign',
    `${file ?? place.url} is the database of another program; it was left as it is.`,
  );

const tooNew = (file: string | null, version: number, newest: number): Promise<Problem> | Problem =>
  said(
    file,
    'database-newer',
    `The database was written by a newer Preylarder (schema ${version}; this one knows up to ${newest}). ` +
      'It was left as it is; start the newer program.',
  );

const said = (file: string | null, code: string, sentence: string): Promise<Problem> | Problem =>
  file === null ? problem(code, sentence) : refusal(file, code, sentence);
