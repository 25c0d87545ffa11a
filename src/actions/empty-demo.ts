/**
 * Empties the demo room in one act. What the keeper's own rows rest on stays, and is the keeper's from then on;
 * so do settings the keeper changed.
 */
import { z } from 'zod';
import { grouped } from '../husbandry/grouped.ts';
import { ok } from '../husbandry/result.ts';
import { NAMING, type Noun, nameOf, nouns, type Puts, type Rows, rowsOf, type Tx } from '../store/index.ts';
import { formId } from './fields.ts';
import { action } from './perform.ts';

export const emptyDemo = action({
  verb: 'empty-demo',
  schema: z.strictObject({ formId }),
  body: async ({ tx }) => {
    const rows = await everyRow(tx);
    const needed = neededIn(rows);
    const stays = ({ key }: Placed): boolean => needed.has(key);
    const demo = rows.filter(isDemo);
    const drops = byNoun(demo.filter((row) => !stays(row)).map(({ noun, row }) => [noun, nameOf(row)]));
    const kept = byNoun(demo.filter(stays).map(({ noun, row }) => [noun, { ...row, demo: false }]));
    const setting = (await tx.ask(rowsOf('setting', { where: OF_DEMO }))).map(nameOf);
    return ok({
      summary: 'Emptied the demo room',
      drops: { ...drops, setting },
      puts: kept as Puts,
      reply: { animals: drops.animal?.length ?? 0 },
    });
  },
});

const OF_DEMO = `key = 'ofDemo' or key in (
  select j.value from setting made join json_each(made.value) j where made.key = 'ofDemo')`;

/** A row with its noun, and both in one word. */
interface Placed {
  readonly noun: Noun;
  readonly row: Rows[Noun];
  readonly key: string;
}

const keyOf = (noun: Noun, name: string): string => `${noun} ${name}`;

async function everyRow(tx: Tx): Promise<readonly Placed[]> {
  const rows: Placed[] = [];
  for (const noun of nouns)
    for (const row of await tx.ask(rowsOf(noun))) rows.push({ noun, row, key: keyOf(noun, nameOf(row)) });
  return rows;
}

const isDemo = ({ row }: Placed): boolean => 'demo' in row && row.demo;

/** The keeper's own rows, what they name, and what those name in turn. */
function neededIn(rows: readonly Placed[]): ReadonlySet<string> {
  const byKey = new Map(rows.map((each) => [each.key, each]));
  const needed = new Set(rows.filter((each) => !isDemo(each)).map(({ key }) => key));
  for (const key of needed) for (const named of namedBy(byKey.get(key))) needed.add(named);
  return needed;
}

function namedBy(placed: Placed | undefined): readonly string[] {
  if (placed === undefined) return [];
  const fields = placed.row as unknown as Readonly<Record<string, unknown>>;
  return NAMING.filter(([noun]) => noun === placed.noun).flatMap(([, field, named]) => {
    const name = fields[field];
    return typeof name === 'string' ? [keyOf(named, name)] : [];
  });
}

function byNoun<T>(pairs: readonly (readonly [Noun, T])[]): { readonly [N in Noun]?: readonly T[] } {
  const found = grouped(pairs, ([noun]) => noun);
  return Object.fromEntries([...found].map(([noun, each]) => [noun, each.map(([, value]) => value)]));
}
