/** Acts of the keeper: each is written once with its changes and entries, and can be voided as a whole. */
import type { DayNumber } from '../husbandry/calendar.ts';
import { addEntries, type EntryInput } from './entries.ts';
import { type Noun, nameOf, nouns, type Rows } from './nouns.ts';
import { jsonQuery, type Query, type Tx } from './query.ts';
import { dropRows, putRows, rowsNamed } from './rows.ts';

export interface ActMark {
  /** Names the form sent; the same name twice is the same act. Null for acts without a form. */
  readonly formId: string | null;
  readonly verb: string;
  readonly moment: string;
  readonly day: DayNumber;
}

/** Rows to be written, by noun. */
export type Puts = { readonly [N in Noun]?: readonly Rows[N][] };
/** Names of rows to be removed, by noun. */
export type Drops = { readonly [N in Noun]?: readonly string[] };

export interface ActBody {
  /** What was done, as the keeper would say it. */
  readonly summary: string;
  readonly reply?: unknown;
  readonly puts?: Puts;
  readonly drops?: Drops;
  readonly entries?: readonly EntryInput[];
  readonly undoes?: number;
}

export interface Act {
  readonly id: number;
  readonly verb: string;
  readonly summary: string;
  readonly writtenAt: string;
  readonly day: DayNumber;
  readonly reply: unknown;
  /** The act this one undoes. */
  readonly undoes: number | null;
  readonly voidedAt: string | null;
}

export interface Change {
  readonly noun: Noun;
  readonly code: string;
  readonly before: Rows[Noun] | null;
  readonly after: Rows[Noun] | null;
}

const ACT = `'id', id, 'verb', verb, 'summary', summary, 'writtenAt', written_at, 'day', civil_day,
  'reply', json(reply), 'undoes', undoes, 'voidedAt', voided_at`;
const oneAct = (where: string, value: string | number): Query<Act | null> =>
  jsonQuery(`select (select json_object(${ACT}) from act where ${where} = ?) as body`, [value]);

export const actOfForm = (formId: string): Query<Act | null> => oneAct('form_id', formId);
export const actNumbered = (id: number): Query<Act | null> => oneAct('id', id);

/** The latest acts, newest first. */
export const latestActs = (howMany: number): Query<readonly Act[]> =>
  jsonQuery(
    `select json_group_array(json_object(${ACT})) as body from (
       select * from act order by id desc limit cast(? as integer))`,
    [howMany],
  );

/** The acts that changed one row, newest first, without the undos of them. */
export const actsChanging = (noun: Noun, code: string): Query<readonly Act[]> =>
  jsonQuery(
    `select json_group_array(json_object(${ACT})) as body from (
       select * from act where undoes is null and id in (select act from change where noun = ? and code = ?)
       order by id desc)`,
    [noun, code],
  );

/** Counts every act and every undo. */
export const revision: Query<number> = jsonQuery('select coalesce(max(id), 0) as body from act');

/** Acts by their numbers; numbers unknown are simply absent. */
export const actsNumbered = (ids: readonly number[]): Query<readonly Act[]> =>
  jsonQuery(
    `select json_group_array(json_object(${ACT})) as body from (
       select * from act where id in (select value from json_each(?)) order by id)`,
    [JSON.stringify(ids)],
  );

/** Writes an act with all it does; returns its number. */
export async function addAct(tx: Tx, mark: ActMark, body: ActBody): Promise<number> {
  const id = await tx.ask({
    sql: `insert into act (form_id, verb, summary, written_at, civil_day, reply, undoes)
          values (?, ?, ?, ?, ?, ?, ?) returning id`,
    args: [
      mark.formId,
      mark.verb,
      body.summary,
      mark.moment,
      mark.day,
      JSON.stringify(body.reply ?? null),
      body.undoes ?? null,
    ],
    decode: (rows) => Number(rows[0]?.id),
  });
  for (const noun of [...nouns].reverse()) await drop(tx, id, noun, body.drops?.[noun] ?? []);
  for (const noun of nouns) await put(tx, id, noun, body.puts?.[noun] ?? []);
  await addEntries(tx, id, body.entries ?? []);
  return id;
}

async function put<N extends Noun>(tx: Tx, act: number, noun: N, rows: readonly Rows[N][]): Promise<void> {
  if (rows.length === 0) return;
  const before = new Map((await tx.ask(rowsNamed(noun, rows.map(nameOf)))).map((row) => [nameOf(row), row]));
  await putRows(tx, noun, rows);
  const after = await tx.ask(rowsNamed(noun, rows.map(nameOf)));
  const changes = after.map((row) => change(noun, before.get(nameOf(row)) ?? null, row));
  await addChanges(tx, act, changes.filter(isChange));
}

async function drop(tx: Tx, act: number, noun: Noun, names: readonly string[]): Promise<void> {
  if (names.length === 0) return;
  const before = await tx.ask(rowsNamed(noun, names));
  await dropRows(tx, noun, names);
  await addChanges(
    tx,
    act,
    before.map((row) => change(noun, row, null)),
  );
}

const change = (noun: Noun, before: Rows[Noun] | null, after: Rows[Noun] | null): Change => ({
  noun,
  code: nameOf((after ?? before)!),
  before,
  after,
});

const isChange = ({ before, after }: Change): boolean => JSON.stringify(before) !== JSON.stringify(after);

const addChanges = (tx: Tx, act: number, changes: readonly Change[]): Promise<void> =>
  tx.run(
    `insert into change (act, noun, code, before, after)
     select ?, json_extract(value, '$.noun'), json_extract(value, '$.code'),
       json_extract(value, '$.before'), json_extract(value, '$.after') from json_each(?) order by key`,
    [act, JSON.stringify(changes)],
  );
