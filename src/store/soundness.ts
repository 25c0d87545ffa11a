/** Looks at a database file before it is used, and says why it must not be: it is never replaced or started empty. */
import { closeSync, existsSync, openSync, readSync, statSync, writeFileSync } from 'node:fs';
import { type Problem, problem } from '../husbandry/problems.ts';
import { backupsOf, newestGoodBackup } from './backup.ts';
import { connect } from './connection.ts';

const HEADER = 'SQLite format 3\0';

/** A small file that says a database belongs here. */
const markerOf = (file: string): string => `${file}.belongs-here`;

/** Says that from now on this database is expected to be there. */
export function mark(file: string): void {
  if (existsSync(markerOf(file))) return;
  writeFileSync(
    markerOf(file),
    'The Preylarder database of this name belongs in this folder. While this file is here, a missing database is\n' +
      'reported instead of a new one being started. Delete this file (and move the backups) to start afresh.\n',
  );
}

/** Why this file must not be used, or null when it is sound or new. */
export async function whyUnsound(file: string): Promise<Problem | null> {
  if (isEmpty(file)) return whyMissing(file);
  if (headerOf(file) !== HEADER)
    return refusal(file, 'database-foreign', `${file} is not a database; it was left as it is.`);
  const damage = await damageIn(file);
  if (damage === null) return null;
  return refusal(file, 'database-damaged', `${file} is damaged (${damage}); it was left as it is.`);
}

const isEmpty = (file: string): boolean => !existsSync(file) || statSync(file).size === 0;

async function whyMissing(file: string): Promise<Problem | null> {
  if (!existsSync(markerOf(file)) && backupsOf(file).length === 0) return null;
  const marker = `To start afresh, delete ${markerOf(file)} and move the backups away.`;
  return refusal(file, 'database-missing', `${file} is missing or empty, but it was here before. ${marker}`);
}

function headerOf(file: string): string {
  const bytes = Buffer.alloc(HEADER.length);
  const handle = openSync(file, 'r');
  try {
    readSync(handle, bytes, 0, bytes.length, 0);
  } finally {
    closeSync(handle);
  }
  return bytes.toString('latin1');
}

/** What SQLite finds wrong with the file, or null. */
async function damageIn(file: string): Promise<string | null> {
  try {
    const client = connect({ url: `file:${file}` });
    try {
      const { rows } = await client.execute('PRAGMA quick_check(1)');
      const found = String(rows[0]?.[0]);
      return found === 'ok' ? null : found.replaceAll('\n', ' ');
    } finally {
      client.close();
    }
  } catch (error) {
    if (/busy|locked/i.test(String(error))) return null;
    return error instanceof Error ? error.message : String(error);
  }
}

/** A refusal that names the newest good copy. */
export async function refusal(file: string, code: string, sentence: string): Promise<Problem> {
  const backup = await newestGoodBackup(file);
  const help =
    backup === null
      ? 'There is no good backup beside it.'
      : `The newest good backup is ${backup}; copy it to ${file} to go on from there.`;
  return problem(code, `${sentence} ${help}`);
}
