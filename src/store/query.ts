/** A question to the database: visible SQL, its arguments, and how the rows become a value. */
import type { InArgs, Row } from '@libsql/client';

export interface Query<T> {
  readonly sql: string;
  readonly args: InArgs;
  readonly decode: (rows: readonly Row[]) => T;
}

/** What may be asked and run inside one write transaction. */
export interface Tx {
  readonly ask: <T>(query: Query<T>) => Promise<T>;
  readonly run: (sql: string, args?: InArgs) => Promise<void>;
}

/** A question whose answer is one JSON text in the column `body`. */
export const jsonQuery = <T>(sql: string, args: InArgs = []): Query<T> => ({
  sql,
  args,
  decode: (rows) => JSON.parse(String(rows[0]?.body ?? 'null')) as T,
});
