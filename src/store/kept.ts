/** Answers kept beside the facts: a cache that names the revision and the engine that made each. */

import { ok } from '../husbandry/result.ts';
import type { Query } from './query.ts';
import type { Store } from './store.ts';

export interface Keeping {
  readonly key: string;
  readonly revision: number;
  /** Version of the engine that computed the answer. */
  readonly engine: string;
}

/** The text kept under a key, if it was made from this revision by this engine; else null. */
export const keptAnswer = ({ key, revision, engine }: Keeping): Query<string | null> => ({
  sql: 'select body from kept where key = ? and revision = ? and engine = ?',
  args: [key, revision, engine],
  decode: (rows) => (rows[0] === undefined ? null : String(rows[0].body)),
});

/** The text kept under a key by an engine whose name begins so, whatever it was made from; else null. */
export const lastKept = ({ key, engine }: Pick<Keeping, 'key' | 'engine'>): Query<string | null> => ({
  sql: 'select body from kept where key = ? and substr(engine, 1, ?) = ?',
  args: [key, engine.length, engine],
  decode: (rows) => (rows[0] === undefined ? null : String(rows[0].body)),
});

/** Answers kept at most; a question asked in other words, as of a plan with a wish, has an answer of its own. */
const MOST_KEPT = 200;

/** Keeps an answer as JSON text in place of any older one; the answers of the oldest revisions make room. */
export const keepAnswer = (store: Store, { key, revision, engine }: Keeping, body: string) =>
  store.write(async (tx) => {
    await tx.run(
      `insert into kept (key, revision, engine, body) values (?, ?, ?, ?)
       on conflict (key) do update set revision = excluded.revision, engine = excluded.engine, body = excluded.body`,
      [key, revision, engine, body],
    );
    await tx.run(
      'delete from kept where key in (select key from kept order by revision desc, rowid desc limit -1 offset ?)',
      [MOST_KEPT],
    );
    return ok(null);
  });
