/**
 * Whether an act counts, and since when: undoing turns it off, doing it again turns it on, and each turn is written
 * in the journal as a change of the act itself. Acts are ordered by when they last came to count.
 */
import type { Change } from './acts.ts';
import { jsonQuery, type Query, type Tx } from './query.ts';

/** When the act `a` last came to count: the act that made it so, then its place among the turns of that act. */
export const SINCE = `max(a.id, coalesce((select max(t.act) from change t where t.noun = 'act'
    and t.code = cast(a.id as text)), 0))`;
export const PLACE = `coalesce((select max(t.id) from change t where t.noun = 'act'
    and t.code = cast(a.id as text)), 0)`;

/** What acts changed, the earliest first. */
export const changesOf = (acts: readonly number[]): Query<readonly Change[]> =>
  jsonQuery(
    `select json_group_array(json_object('noun', noun, 'code', code, 'before', json(before), 'after', json(after)))
     as body from (
       select c.* from json_each(?) j join act a on a.id = j.value join change c on c.act = a.id
       where c.noun <> 'act' order by ${SINCE}, ${PLACE}, c.id)`,
    [JSON.stringify(acts)],
  );

export interface Subjects {
  /** What the keeper did, the earliest first: the act itself, or those it undid or did again. */
  readonly acts: readonly number[];
  /** 0 for an act of the keeper, 1 for its undo, 2 for doing it again, and so on. */
  readonly turns: number;
}

/** What an act is about. */
export const subjectsOf = (act: number): Query<Subjects> =>
  jsonQuery(
    `with recursive chain (id, undoes, turns) as (
       select id, undoes, 0 from act where id = ?
       union all select a.id, a.undoes, turns + 1 from chain c join act a on a.id = c.undoes)
     select json_object('turns', (select max(turns) from chain), 'acts', coalesce(
       (select json_group_array(cast(code as integer)) from (
         select code from change where act = ? and noun = 'act' order by id) having count(*) > 0),
       (select json_array(id) from chain where undoes is null))) as body`,
    [act, act],
  );

export interface Turn {
  /** The act that turns others on or off. */
  readonly act: number;
  readonly subjects: readonly number[];
  readonly on: boolean;
  readonly moment: string;
}

/** Turns acts with their entries off or on; earlier turns of theirs can then be turned no more. */
export async function turn(tx: Tx, { act, subjects, on, moment }: Turn): Promise<void> {
  const ids = JSON.stringify(subjects);
  await tx.run(
    `update act set voided_at = ? where undoes is not null and voided_at is null and id in (
       select t.act from json_each(?) j join change t on t.noun = 'act' and t.code = cast(j.value as text))`,
    [moment, ids],
  );
  await tx.run('update act set voided_at = ? where id in (select value from json_each(?))', [
    on ? null : moment,
    ids,
  ]);
  await tx.run('update entry set voided = ? where act in (select value from json_each(?))', [
    on ? 0 : 1,
    ids,
  ]);
  const [before, after] = on ? ['"undone"', '"counts"'] : ['"counts"', '"undone"'];
  await tx.run(
    `insert into change (act, noun, code, before, after)
     select ?, 'act', cast(value as text), ?, ? from json_each(?) order by key`,
    [act, before, after, ids],
  );
}

/** The acts in the order in which they came to count. */
export const inOrder = (acts: readonly number[]): Query<readonly number[]> =>
  jsonQuery(
    `select json_group_array(id) as body from (
       select a.id from json_each(?) j join act a on a.id = j.value order by ${SINCE}, ${PLACE})`,
    [JSON.stringify(acts)],
  );

/**
 * Whether one of these rows lives in a room that was removed, comes to a bin that was closed or is of a kind of the
 * keeper's own that is gone; or is such a room, bin or kind.
 */
export const placeGone = (codes: readonly string[]): Query<boolean> => ({
  ...jsonQuery<boolean>(
    `with mine as materialized (select value as code from json_each(:codes)),
     placed (code, place) as (
       select code, room from animal where left_day is null
       union all select code, room from bin where closed = 0
       union all select code, room from planned_change where cancelled = 0
       union all select code, bin from delivery where state = 'expected'
       union all select code, kind from animal
       union all select code, animal_kind from planned_change),
     closed as (
       select code from room where closed = 1 union all select code from bin where closed = 1
       union all select code from change where noun = 'kind' and coalesce(after, before) ->> '$.base' is not null
         and code not in (select code from kind))
     select json(iif(exists (
       select 1 from placed p join closed c on c.code = p.place
       where p.code in (select code from mine) or p.place in (select code from mine)), 'true', 'false')) as body`,
  ),
  args: { codes: JSON.stringify(codes) },
});

/** Whether entries of acts that count speak of a row or an offer that is not there. */
export const groundGone = (acts: readonly number[]): Query<boolean> =>
  jsonQuery(
    `select json(iif(exists (
       select 1 from json_each(?) j join entry e on e.act = j.value and (
         (e.animal is not null and not exists (select 1 from animal where code = e.animal))
         or (e.bin is not null and not exists (select 1 from bin where code = e.bin))
         or exists (select 1 from entry o where o.id = e.about and o.voided = 1))),
       'true', 'false')) as body`,
    [JSON.stringify(acts)],
  );
