/** Copies of a database file: made whole, checked before they count, newest first. */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Client } from '@libsql/client';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { connect } from './connection.ts';

/** Where the copies of a database lie: in a folder beside it. */
const backupFolder = (file: string): string => join(dirname(file), 'backups');

/** Makes a copy named by the moment (ISO 8601) and checks it; returns its path. */
export async function takeBackup(client: Client, file: string, moment: string): Promise<Result<string>> {
  const folder = backupFolder(file);
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${basename(file)}.${moment.replaceAll(/[:.]/g, '-')}.db`);
  const unproved = `${path}.unproved`;
  rmSync(unproved, { force: true });
  await client.execute({ sql: 'vacuum into ?', args: [unproved] });
  if (!(await isSound(unproved))) return err(backupFailed(path));
  renameSync(unproved, path);
  return ok(path);
}

const backupFailed = (path: string): Problem =>
  problem('backup-failed', `The copy ${path} did not pass its check, so nothing was changed.`);

/** Whether a file opens and passes SQLite's full check of integrity. */
async function isSound(file: string): Promise<boolean> {
  const client = connect({ url: `file:${file}` });
  try {
    const { rows } = await client.execute('PRAGMA integrity_check');
    return rows.length === 1 && rows[0]?.[0] === 'ok';
  } catch {
    return false;
  } finally {
    client.close();
  }
}

/** Copies of a database that were made, newest first. */
export function backupsOf(file: string): readonly string[] {
  const folder = backupFolder(file);
  if (!existsSync(folder)) return [];
  const own = readdirSync(folder).filter(
    (name) => name.startsWith(`${basename(file)}.`) && name.endsWith('.db'),
  );
  return own
    .sort()
    .reverse()
    .map((name) => join(folder, name));
}

/** The newest copy that passes its check, or null. */
export async function newestGoodBackup(file: string): Promise<string | null> {
  for (const path of backupsOf(file)) if (await isSound(path)) return path;
  return null;
}
