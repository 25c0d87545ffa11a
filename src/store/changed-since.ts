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

/** The newest act after a revision that changed any of these rows, and the row's code; null when none did. */
export const anyChangedSince = (
  noun: Noun,
  codes: readonly string[],
  revision: number,
): Query<{ readonly code: string; readonly summary: string } | null> =>
  jsonQuery(
    `select (select json_object('code', c.code, 'summary', a.summary)
       from change c join act a on a.id = c.act
       where c.act > ? and c.noun = ? and c.code in (select value from json_each(?))
       order by c.act desc limit 1) as body`,
    [revision, noun, JSON.stringify(codes)],
  );
