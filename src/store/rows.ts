/** Reads and writes the rows of any noun, many at a time, as JSON through one statement. */
import { columnsOf, type Noun, type Rows } from './nouns.ts';
import { jsonQuery, type Query, type Tx } from './query.ts';

interface Choice {
  /** SQL condition with `?` marks. */
  readonly where?: string;
  readonly args?: readonly (string | number | null)[];
  readonly order?: string;
}

/** All rows of a noun that meet a condition, in order. */
export function rowsOf<N extends Noun>(noun: N, choice: Choice = {}): Query<readonly Rows[N][]> {
  const order = choice.order ?? keyColumn(noun);
  const sql = `select json_group_array(json_object(${pairs(noun)})) as body from (
    select * from ${noun} where ${choice.where ?? 'true'} order by ${order})`;
  return jsonQuery(sql, [...(choice.args ?? [])]);
}

/** The rows of these names; names unknown are simply absent. */
export const rowsNamed = <N extends Noun>(noun: N, names: readonly string[]): Query<readonly Rows[N][]> =>
  rowsOf(noun, {
    where: `${keyColumn(noun)} in (select value from json_each(?))`,
    args: [JSON.stringify(names)],
  });

/** One row by its name, or null. */
export function rowNamed<N extends Noun>(noun: N, name: string): Query<Rows[N] | null> {
  const many = rowsNamed(noun, [name]);
  return { ...many, decode: (rows) => many.decode(rows)[0] ?? null };
}

/** Writes rows, new or changed. */
export async function putRows<N extends Noun>(tx: Tx, noun: N, rows: readonly Rows[N][]): Promise<void> {
  const names = fieldNames(noun);
  const values = names.map((name) => `json_extract(value, '$.${name}')`);
  const updates = names.map(snake).map((column) => `${column} = excluded.${column}`);
  await tx.run(
    `insert into ${noun} (${names.map(snake).join(', ')}) select ${values.join(', ')} from json_each(?) where true
     on conflict (${keyColumn(noun)}) do update set ${updates.join(', ')}`,
    [JSON.stringify(rows.map((row) => packed(noun, row)))],
  );
}

/** Removes rows by name. */
export const dropRows = (tx: Tx, noun: Noun, names: readonly string[]): Promise<void> =>
  tx.run(`delete from ${noun} where ${keyColumn(noun)} in (select value from json_each(?))`, [
    JSON.stringify(names),
  ]);

const fieldNames = (noun: Noun): readonly string[] => Object.keys(columnsOf[noun]);
const snake = (name: string): string => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
const keyColumn = (noun: Noun): string => fieldNames(noun)[0]!;

/** `'name', column` pairs for json_object. */
function pairs(noun: Noun): string {
  const said = (name: string, column: string): string => {
    if (column === 'flag') return `json(iif(${snake(name)}, 'true', 'false'))`;
    return column === 'json' ? `json(${snake(name)})` : snake(name);
  };
  return Object.entries(columnsOf[noun])
    .map(([name, column]) => `'${name}', ${said(name, column)}`)
    .join(', ');
}

/** A JSON column travels as text inside the JSON of the row. */
function packed<N extends Noun>(noun: N, row: Rows[N]): Readonly<Record<string, unknown>> {
  const columns: Readonly<Record<string, string>> = columnsOf[noun];
  const fields = Object.entries(row).map(([name, value]) => [
    name,
    columns[name] === 'json' ? JSON.stringify(value) : value,
  ]);
  return Object.fromEntries(fields);
}
