/** Lists sent and not yet written down, kept until the keeper says yes; only the last few. */
import { ok, type Result } from '../husbandry/result.ts';
import type { Query } from './query.ts';
import type { Store } from './store.ts';

const ENGINE = 'draft';
const DRAFTS_KEPT = 5;
const keyOf = (id: string): string => `draft-${id}`;

/** Keeps a draft as JSON text under its id, in place of an older one of that id. */
export const keepDraft = (store: Store, id: string, body: string): Promise<Result<null>> =>
  store.write(async (tx) => {
    await tx.run(
      `insert into kept (key, revision, engine, body) values (?, 0, ?, ?)
       on conflict (key) do update set body = excluded.body`,
      [keyOf(id), ENGINE, body],
    );
    await tx.run(
      `delete from kept where engine = ? and key not in (
         select key from kept where engine = ? order by rowid desc limit ${DRAFTS_KEPT})`,
      [ENGINE, ENGINE],
    );
    return ok(null);
  });

/** The draft of this id, or null when it is no longer kept. */
export const draftNamed = (id: string): Query<string | null> => ({
  sql: 'select body from kept where key = ? and engine = ?',
  args: [keyOf(id), ENGINE],
  decode: (rows) => (rows[0] === undefined ? null : String(rows[0].body)),
});
