/** The state rebuilt from the journal alone, and the state as the tables say it. */
import { ok } from '../../../src/husbandry/result.ts';
import { nameOf, rowsOf, type Store, type Tx } from '../../../src/store/index.ts';
import { nouns } from '../../../src/store/nouns.ts';
import { putRows } from '../../../src/store/rows.ts';

type Ask = Tx['ask'];

export interface State {
  /** By noun, rows by name. */
  readonly rows: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  /** Numbers of the keeper's acts that count. */
  readonly acts: readonly number[];
  /** Numbers of the entries that count. */
  readonly entries: readonly number[];
}

const ids = (sql: string) => ({
  sql,
  args: [],
  decode: (rows: readonly Record<string, unknown>[]) => rows.map(({ id }) => Number(id)),
});

/** What the tables say. */
export async function stateOf(ask: Ask): Promise<State> {
  const rows: Record<string, Record<string, unknown>> = {};
  for (const noun of nouns)
    rows[noun] = Object.fromEntries((await ask(rowsOf(noun))).map((row) => [nameOf(row), row]));
  return {
    rows,
    acts: await ask(ids('select id from act where undoes is null and voided_at is null order by id')),
    entries: await ask(ids('select id from entry where voided = 0 order by id')),
  };
}

interface Line {
  readonly noun: string;
  readonly code: string;
  readonly after: unknown;
}

const journal = {
  sql: 'select noun, code, after from change order by id',
  args: [],
  decode: (rows: readonly Record<string, unknown>[]): readonly Line[] =>
    rows.map(({ noun, code, after }) => ({
      noun: String(noun),
      code: String(code),
      after: after === null ? null : JSON.parse(String(after)),
    })),
};
const written = {
  sql: 'select e.id, e.act from entry e order by e.id',
  args: [],
  decode: (rows: readonly Record<string, unknown>[]) =>
    rows.map(({ id, act }) => [Number(id), Number(act)] as const),
};

/** What the journal alone says: every change put one after another, beginning with nothing. */
export async function rebuilt(ask: Ask): Promise<State> {
  const rows: Record<string, Record<string, unknown>> = Object.fromEntries(nouns.map((noun) => [noun, {}]));
  const undone = new Set<number>();
  for (const { noun, code, after } of await ask(journal)) {
    if (noun === 'act') {
      if (after === 'undone') undone.add(Number(code));
      else undone.delete(Number(code));
    } else if (after === null) delete rows[noun]![code];
    else rows[noun]![code] = after;
  }
  const own = await ask(ids('select id from act where undoes is null order by id'));
  const entries = (await ask(written)).filter(([, act]) => !undone.has(act)).map(([id]) => id);
  return { rows, acts: own.filter((id) => !undone.has(id)), entries };
}

const all = (table: string) => ({
  sql: `select * from ${table} order by id`,
  args: [],
  decode: (rows: readonly Record<string, unknown>[]) => rows.map((row) => ({ ...row })),
});

/** Plays the journal of one store into an empty one: rows as rebuilt, acts as written, entries that count. */
export async function playInto(mirror: Store, from: Store): Promise<void> {
  const { rows, entries } = await rebuilt(from.ask);
  const acts = await from.ask(all('act'));
  const lines = (await from.ask(all('entry'))).filter(({ id }) => entries.includes(Number(id)));
  const done = await mirror.write(async (tx) => {
    for (const noun of nouns) await putRows(tx, noun, Object.values(rows[noun] ?? {}) as never);
    for (const [table, own] of [
      ['act', acts],
      ['entry', lines],
    ] as const)
      for (const row of own) {
        const names = Object.keys(row).filter((name) => name !== 'voided');
        const marks = names.map(() => '?').join(', ');
        const values = names.map((name) => row[name] as string | number | null);
        await tx.run(`insert into ${table} (${names.join(', ')}) values (${marks})`, values);
      }
    return ok(null);
  });
  if (!done.ok) throw new Error(done.problem.sentence);
}
