/** Which database errors are expected trouble, and the sentence each gives the keeper. */
import { LibsqlError } from '@libsql/client';
import { type Problem, problem } from '../husbandry/problems.ts';

const SENTENCES: Readonly<Record<string, readonly [code: string, sentence: string]>> = {
  SQLITE_BUSY: [
    'database-busy',
    'Another program holds the database. Nothing was written; close the other program and try again.',
  ],
  SQLITE_LOCKED: ['database-busy', 'The database is locked. Nothing was written; try again in a moment.'],
  SQLITE_FULL: [
    'disk-full',
    'The disk is full. Nothing was written; free some space and try again. Pages can still be read.',
  ],
  SQLITE_READONLY: [
    'database-read-only',
    'The database may not be written to. Nothing was written; check who owns the file and its folder.',
  ],
  SQLITE_IOERR: ['disk-error', 'The disk reported an error. Nothing was written; check the disk.'],
  SQLITE_CANTOPEN: [
    'database-unreachable',
    'The database file cannot be opened. Check that its folder is there and may be written to.',
  ],
};

const codeOf = (error: unknown): string => (error instanceof LibsqlError ? error.code : '');

/** Whether waiting and trying again may help. */
export const isBusy = (error: unknown): boolean =>
  codeOf(error) === 'SQLITE_BUSY' || codeOf(error) === 'SQLITE_LOCKED';

/** Whether a row is still named by another row. */
export const isStillNamed = (error: unknown): boolean => codeOf(error) === 'SQLITE_CONSTRAINT';

/** The Problem an error of the database stands for; anything else is a bug and is thrown on. */
export function troubleOf(error: unknown): Problem {
  const known = SENTENCES[codeOf(error)];
  if (known === undefined) throw error;
  return problem(...known);
}
