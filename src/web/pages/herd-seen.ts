/** A mark of who was in a list when it was shown, so that an act on all of them meets nobody else. */
import { createHash } from 'node:crypto';
import type { Seen } from './herd.ts';

const LETTERS = 16;

/** How many, and a hash of their codes in order: '212.3f9a…'. */
export function markOf(found: readonly Seen[]): string {
  const hash = createHash('sha256');
  for (const { animal } of found) hash.update(`${animal.code} `);
  return `${found.length}.${hash.digest('hex').slice(0, LETTERS)}`;
}

/** How many a mark speaks of; 0 when it cannot be read. */
export const countOfMark = (mark: string): number => Number.parseInt(mark, 10) || 0;
