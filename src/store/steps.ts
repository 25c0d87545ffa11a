/** What was done as the keeper's steps: acts of one evening, and acts undone together, stand as one. */
import { jsonQuery, type Query } from './query.ts';

/** Verbs whose acts of one evening are one step. */
export const EVENING_VERBS: readonly string[] = ['record-evening', 'record-morning'];

export interface Sought {
  readonly animal?: string | undefined;
  readonly bin?: string | undefined;
  readonly verbs?: readonly string[] | undefined;
  /** All verbs but these. */
  readonly otherThan?: readonly string[] | undefined;
  /** Each word stands in what was done, or names one of the rows it touched. */
  readonly words?: readonly { readonly text: string; readonly codes: readonly string[] }[] | undefined;
}

const LISTED = EVENING_VERBS.map((verb) => `'${verb}'`).join(', ');
const TURNED_BY = `(select max(t.act) from change t where t.noun = 'act' and t.code = cast(a.id as text))`;
/** Acts done before the demo room was last emptied are another room's: they make no step with those done after. */
const DEMO_EMPTIED = `coalesce((select max(d.id) from act d
  where d.verb = 'empty-demo' and d.voided_at is null), 0)`;
const STEP = `case when a.voided_at is not null then 'undone ' || coalesce(${TURNED_BY}, a.id)
  when a.verb in (${LISTED}) then a.verb || ' ' || coalesce(a.reply ->> '$.evening', a.id)
    || iif(a.id < ${DEMO_EMPTIED}, ' before', '') else a.id end`;

/** Acts that touched a row: said something of it, or changed it. */
const TOUCHED = `(select act from entry where animal in (select value from json_each(:codes))
  union select act from entry where bin in (select value from json_each(:codes))
  union select act from change where noun <> 'act' and code in (select value from json_each(:codes)))`;

interface Part {
  readonly sql: string;
  readonly args: Readonly<Record<string, string>>;
}

function conditions({ animal, bin, verbs, otherThan, words = [] }: Sought): readonly Part[] {
  const codes = [animal, bin].filter((code) => code !== undefined);
  return [
    ...codes.map((code, at) => touching(`row${at}`, [code])),
    ...(verbs === undefined ? [] : [verbIn('verbs', verbs)]),
    ...(otherThan === undefined ? [] : [negated(verbIn('others', otherThan))]),
    ...words.map((word, at) => wordIn(`word${at}`, word)),
  ];
}

const touching = (name: string, codes: readonly string[]): Part => ({
  sql: `a.id in ${TOUCHED.replaceAll(':codes', `:${name}`)}`,
  args: { [name]: JSON.stringify(codes) },
});
const verbIn = (name: string, verbs: readonly string[]): Part => ({
  sql: `a.verb in (select value from json_each(:${name}))`,
  args: { [name]: JSON.stringify(verbs) },
});
const negated = ({ sql, args }: Part): Part => ({ sql: `not ${sql}`, args });

function wordIn(name: string, { text, codes }: { text: string; codes: readonly string[] }): Part {
  const { sql, args } = touching(`${name}codes`, codes);
  return { sql: `(instr(lower(a.summary), lower(:${name})) > 0 or ${sql})`, args: { ...args, [name]: text } };
}

export interface Shown {
  readonly howMany: number;
  readonly from: number;
}

/** Steps, newest first, each as the numbers of its acts, the earliest first. */
export function stepsDone(sought: Sought, { howMany, from }: Shown): Query<readonly (readonly number[])[]> {
  const parts = conditions(sought);
  const where = ['a.undoes is null', ...parts.map(({ sql }) => sql)].join(' and ');
  return {
    ...jsonQuery<readonly (readonly number[])[]>(
      `select json_group_array(json(acts)) as body from (
         select json_group_array(id) as acts from (
           select a.id, ${STEP} as step from act a where ${where} order by a.id)
         group by step order by max(id) desc limit ${howMany} offset ${from})`,
    ),
    args: Object.assign({}, ...parts.map(({ args }) => args)),
  };
}

/** Of acts that were undone, the undo that holds and how many acts it undid. */
export const undosOf = (
  acts: readonly number[],
): Query<readonly (readonly [act: number, undo: number, together: number])[]> =>
  jsonQuery(
    `select json_group_array(json_array(id, undo, (
       select count(*) from change c where c.act = undo and c.noun = 'act'))) as body
     from (select a.id, ${TURNED_BY} as undo from json_each(?) j join act a on a.id = j.value
       where a.voided_at is not null) where undo is not null`,
    [JSON.stringify(acts)],
  );

/** Acts that count of the same evening and verb in the room as it is now, the earliest first. */
export const actsOfEvening = (verb: string, evening: string): Query<readonly number[]> =>
  jsonQuery(
    `select json_group_array(id) as body from (
       select id from act where verb = ? and reply ->> '$.evening' = ? and undoes is null and voided_at is null
         and id > ${DEMO_EMPTIED} order by id)`,
    [verb, evening],
  );

/** What acts of a round and its morning add up to. */
export interface RoundCount {
  readonly offered: number;
  readonly not: number;
  readonly closed: number;
  /** Outcomes told by name, not by the button for the rest. */
  readonly named: number;
}

export const roundCount = (acts: readonly number[]): Query<RoundCount> => ({
  ...jsonQuery<RoundCount>(
    `with mine as materialized (select a.* from json_each(:acts) j join act a on a.id = j.value),
     told as materialized (select e.* from mine join entry e on e.act = mine.id),
     fed as (select count(*) as n from told where kind = 'offered')
     select json_object('offered', (select n from fed),
       'not', (select coalesce(sum(reply ->> '$.recorded'), 0) from mine) - (select n from fed),
       'closed', (select coalesce(sum(reply ->> '$.closed'), 0) from mine),
       'named', (select count(*) from told where about is not null and not (details ->> '$.bulk'))) as body`,
  ),
  args: { acts: JSON.stringify(acts) },
});
