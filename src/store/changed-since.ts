/** Whether somebody changed a row after a page about it was read. */
import type { Noun } from './nouns.ts';
import { jsonQuery, type Query } from './query.ts';

/** The newest act after a revision that changed a row, or null. */
export const changedSince = (
  noun: Noun,
  code: string,
  revision: number,
): Query<{ readonly summary: string; readonly writtenAt: string } | null> =>
  jsonQuery(
    `select (select json_object('summary', a.summary, 'writtenAt', a.written_at)
       from change c join act a on a.id = c.act
       where c.noun = ? and c.code = ? and c.act > ? order by c.act desc limit 1) as body`,
    [noun, code, revision],
  );
