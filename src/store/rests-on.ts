/** Which newer acts rest on an act, so that undoing it first would leave a gap. */
import { NAMING } from './naming.ts';
import { jsonQuery, type Query, type Tx } from './query.ts';
import { PLACE, SINCE } from './turns.ts';

const NAMES = `names (noun, field, named) as (values
  ${NAMING.map((names) => `(${names.map((word) => `'${word}'`).join(', ')})`).join(', ')})`;

/** Rows named by the images of changes that meet a condition. */
const namesIn = (condition: string): string =>
  ['before', 'after']
    .map(
      (image) => `select c.act, n.named as noun, c.${image} ->> n.field as code
        from names n join change c on c.noun = n.noun where ${condition}`,
    )
    .join(' union all ');

/** A row was made or dropped, closed or brought back; a kind of the Book is there whatever the keeper says of it. */
const CAME_OR_WENT = `((c.before is null or c.after is null or c.before ->> '$.closed' is not c.after ->> '$.closed')
  and (c.noun <> 'kind' or coalesce(c.after, c.before) ->> '$.base' is not null))`;
const IS_MINE = 'c.act in (select id from mine)';
/** Only where a row of this noun came or went: it reads much of the journal. */
const ONE_WENT = 'n.named in (select noun from touched where edge)';

/**
 * Pairs of an act and a newer one that counts and rests on it: it changed the same row; it names a row that came or
 * went with the other; it speaks of an animal or bin that came with it; it says what became of its offer.
 */
const restingOn = (acts: readonly number[]): Query<readonly (readonly [act: number, newer: number])[]> => ({
  ...jsonQuery<readonly (readonly [number, number])[]>(
    `with ${NAMES}, mine as materialized (
       select a.id, ${SINCE} as since, ${PLACE} as place from json_each(:acts) j join act a on a.id = j.value),
     touched as materialized (
       select c.act, c.noun, c.code, ${CAME_OR_WENT} as edge
       from mine join change c on c.act = mine.id where c.noun <> 'act'),
     mine_names as materialized (${namesIn(IS_MINE)}),
     all_names as materialized (${namesIn(ONE_WENT)}),
     pairs (act, newer) as (
       select t.act, c.act from touched t join change c on c.noun = t.noun and c.code = t.code
       union select t.act, r.act from touched t join all_names r on t.edge and r.noun = t.noun and r.code = t.code
       union select r.act, c.act from mine_names r join change c on c.noun = r.noun and c.code = r.code
         and ${CAME_OR_WENT}
       union select t.act, e.act from touched t join entry e
         on t.edge and t.noun = 'animal' and e.animal = t.code and e.voided = 0
       union select t.act, e.act from touched t join entry e
         on t.edge and t.noun = 'bin' and e.bin = t.code and e.voided = 0
       union select o.act, x.act from mine join entry o on o.act = mine.id
         join entry x on x.about = o.id and x.voided = 0)
     select json_group_array(json_array(p.act, p.newer)) as body
     from pairs p join mine on mine.id = p.act join act a on a.id = p.newer
     where a.voided_at is null and a.undoes is null and (${SINCE}, ${PLACE}) > (mine.since, mine.place)`,
  ),
  args: { acts: JSON.stringify(acts) },
});

/** By act, the newer acts that rest on it directly. */
export type Resting = ReadonlyMap<number, ReadonlySet<number>>;

/** What rests on these acts and on what rests on them, followed until a number of acts is known. */
export async function restingUpon(
  ask: Tx['ask'],
  acts: readonly number[],
  upTo = Number.POSITIVE_INFINITY,
): Promise<Resting> {
  const found = new Map<number, Set<number>>();
  let next = [...new Set(acts)];
  while (next.length > 0) {
    for (const act of next) found.set(act, new Set());
    for (const [act, newer] of await ask(restingOn(next))) found.get(act)?.add(newer);
    const newer = new Set(next.flatMap((act) => [...(found.get(act) ?? [])]));
    next = found.size > upTo ? [] : [...newer].filter((act) => !found.has(act));
  }
  return found;
}

/** Acts with all that rests on them. */
export function withResting(resting: Resting, acts: readonly number[]): ReadonlySet<number> {
  const all = new Set(acts);
  for (const act of all) for (const newer of resting.get(act) ?? []) all.add(newer);
  return all;
}

/** The newest act that rests on any of these and is none of them; null when the way is free. */
export async function inTheWay(ask: Tx['ask'], acts: readonly number[]): Promise<number | null> {
  const own = new Set(acts);
  const newer = (await ask(restingOn(acts))).map(([, each]) => each).filter((each) => !own.has(each));
  return newer.length === 0 ? null : Math.max(...newer);
}
