/** Opening: a file that is not sound is refused and left as it is; a schema grows only after a proved copy. */
import {
  copyFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { createClient } from '@libsql/client';
import { expect, test } from 'vitest';
import { addRoom } from '../../src/actions/index.ts';
import { backupsOf, newestGoodBackup, openStore, rowsOf } from '../../src/store/index.ts';
import { migrations } from '../../src/store/migrations/index.ts';
import { freshContext, freshFolder, good, MOMENT, urlOf } from '../support/store-at.ts';

const freshFile = () => join(freshFolder(), 'larder.db');
const open = (file: string, steps = migrations) =>
  openStore({ place: { url: urlOf(file) }, moment: MOMENT, steps });
const NEWEST = migrations.length;
const next = (statements: readonly string[]) => [...migrations, { version: NEWEST + 1, statements }];
const grown = next(['alter table room add column note text']);

/** A database with one room, closed. */
async function written(file = freshFile()): Promise<string> {
  const store = good(await open(file));
  good(await addRoom(await freshContext(store), { name: 'Cellar', dayTempC: 20, nightTempC: 18 }));
  await store.close();
  return file;
}

/** Runs one statement on a file by other means than the store. */
async function tamper(file: string, sql: string): Promise<void> {
  const client = createClient({ url: urlOf(file) });
  await client.execute(sql);
  client.close();
}

/** Opens a file that must be refused and must not change by a byte. */
async function refusedUntouched(file: string) {
  const before = readFileSync(file);
  const opened = await open(file);
  expect(readFileSync(file).equals(before)).toBe(true);
  expect(opened.ok).toBe(false);
  return opened.ok ? null : opened.problem;
}

test('what was written is there after closing and opening again', async () => {
  const store = good(await open(await written()));
  expect(await store.ask(rowsOf('room'))).toMatchObject([{ code: 'R1', name: 'Cellar', demo: false }]);
  await store.close();
});

test('a file that is no database is refused', async () => {
  const file = freshFile();
  writeFileSync(file, 'Dear diary, today the crickets sang. '.repeat(50));
  expect(await refusedUntouched(file)).toMatchObject({ code: 'database-foreign' });
});

test('the database of another program is refused', async () => {
  const file = freshFile();
  await tamper(file, 'create table songs (title text)');
  expect(await refusedUntouched(file)).toMatchObject({ code: 'database-foreign' });
});

test('a damaged database is refused and the newest good backup is named', async () => {
  const file = await written();
  const store = good(await open(file, grown));
  await store.close();
  const [backup] = backupsOf(file);
  const bytes = readFileSync(file);
  bytes.fill(0xff, 100, 8000);
  writeFileSync(file, bytes);
  const refused = await refusedUntouched(file);
  expect(refused?.code).toBe('database-damaged');
  expect(refused?.sentence).toContain(`The newest good backup is ${backup}`);
});

test('a newer schema is refused', async () => {
  const file = await written();
  await tamper(file, 'update schema_version set version = 99');
  expect(await refusedUntouched(file)).toMatchObject({
    code: 'database-newer',
    sentence: expect.stringContaining(`schema 99; this one knows up to ${NEWEST}`),
  });
});

test('a database that was here and is gone is not started empty', async () => {
  const file = await written();
  rmSync(file);
  expect(await open(file)).toMatchObject({ ok: false, problem: { code: 'database-missing' } });
  expect(existsSync(file)).toBe(false);
});

test('a database cut to nothing is not started empty', async () => {
  const file = await written();
  truncateSync(file, 0);
  expect(await refusedUntouched(file)).toMatchObject({ code: 'database-missing' });
});

test('before a schema grows, a copy that opens by itself is made', async () => {
  const file = await written();
  const store = good(await open(file, grown));
  await store.close();
  const backups = backupsOf(file);
  expect(backups).toHaveLength(1);
  expect(await newestGoodBackup(file)).toBe(backups[0]);
  const copy = freshFile();
  copyFileSync(backups[0]!, copy);
  const old = good(await open(copy));
  expect(await old.ask(rowsOf('room'))).toHaveLength(1);
  await old.close();
});

test('a step that fails leaves the schema as it was', async () => {
  const file = await written();
  const broken = next(['create table extra (a integer)', 'nonsense']);
  await expect(open(file, broken)).rejects.toThrow('nonsense');
  const store = good(await open(file));
  expect(
    await store.ask({
      sql: 'select version from schema_version',
      args: [],
      decode: (rows) => rows[0]?.version,
    }),
  ).toBe(NEWEST);
  await store.close();
});

test('a backup that is not sound is not called good', async () => {
  const file = await written();
  const store = good(await open(file, grown));
  await store.close();
  writeFileSync(backupsOf(file)[0]!, 'not a copy');
  expect(await newestGoodBackup(file)).toBeNull();
  expect(readdirSync(join(file, '..', 'backups'))).toHaveLength(1);
});
