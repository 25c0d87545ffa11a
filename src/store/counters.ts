/** Short codes that are handed out once and never again, not even after an undo. */
import type { Tx } from './query.ts';

/** The next codes of a series, such as A17, A18. */
export async function nextCodes(tx: Tx, letter: string, howMany: number): Promise<readonly string[]> {
  if (howMany === 0) return [];
  const last = await tx.ask({
    sql: `insert into counter (name, last) values (?, ?)
          on conflict (name) do update set last = last + excluded.last returning last`,
    args: [letter, howMany],
    decode: (rows) => Number(rows[0]?.last),
  });
  return Array.from({ length: howMany }, (_, at) => `${letter}${last - howMany + 1 + at}`);
}
