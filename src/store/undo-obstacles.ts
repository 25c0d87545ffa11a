/** What newer acts stand on an act, so that undoing it first would leave a gap. */
import { type Problem, problem } from '../husbandry/problems.ts';
import type { Act, Change } from './acts.ts';
import { jsonQuery, type Query, type Tx } from './query.ts';

interface Newer {
  readonly summary: string;
}

/** The newest act in the way, as a Problem; null when the way is free. */
export async function standsInTheWay(
  tx: Tx,
  target: Act,
  changes: readonly Change[],
): Promise<Problem | null> {
  const newer =
    (await tx.ask(newerChange(target.id))) ??
    (await tx.ask(newerEntry(target.id, changes))) ??
    (await tx.ask(newerOutcome(target.id)));
  if (newer !== null)
    return problem(
      'newer-stands',
      `"${target.summary}" cannot be undone yet: "${newer.summary}" came later and rests on it. Undo that first.`,
    );
  if (await tx.ask(kindMissing(changes)))
    return problem(
      'kind-missing',
      `"${target.summary}" cannot be undone: an animal or a plan would be left without its kind.`,
    );
  return (await tx.ask(brokenGround(target.undoes ?? 0)))
    ? problem('ground-gone', `"${target.summary}" cannot be undone: what it was written about is gone.`)
    : null;
}

const newest = (from: string, args: (string | number)[]): Query<Newer | null> =>
  jsonQuery(
    `select (select json_object('summary', a.summary) from ${from}
       and a.voided_at is null and a.undoes is null order by a.id desc limit 1) as body`,
    args,
  );

/** A later act that stands and changed the same row. */
const newerChange = (act: number): Query<Newer | null> =>
  newest(
    `change mine join change theirs on theirs.noun = mine.noun and theirs.code = mine.code and theirs.act > mine.act
     join act a on a.id = theirs.act where mine.act = ?`,
    [act],
  );

/** A later entry about a row that would go. */
const newerEntry = (act: number, changes: readonly Change[]): Query<Newer | null> =>
  newest(
    `json_each(?) gone join entry e on e.voided = 0 and e.act > ?
       and ((e.animal = json_extract(gone.value, '$.code') and json_extract(gone.value, '$.noun') = 'animal')
         or (e.bin = json_extract(gone.value, '$.code') and json_extract(gone.value, '$.noun') = 'bin'))
     join act a on a.id = e.act where true`,
    [JSON.stringify(changes.filter(({ before }) => before === null)), act],
  );

/** Another act's outcome about an offer of this act. */
const newerOutcome = (act: number): Query<Newer | null> =>
  newest(
    `entry mine join entry x on x.about = mine.id and x.voided = 0 and x.act <> mine.act
     join act a on a.id = x.act where mine.act = ?`,
    [act],
  );

/** Whether entries that would count again speak of a row or an offer that is not there. */
const brokenGround = (act: number): Query<boolean> =>
  jsonQuery(
    `select json(iif(exists (
       select 1 from entry e where e.act = ? and (
         (e.animal is not null and not exists (select 1 from animal where code = e.animal))
         or (e.bin is not null and not exists (select 1 from bin where code = e.bin))
         or exists (select 1 from entry o where o.id = e.about and o.voided = 1 and o.act <> e.act))),
       'true', 'false')) as body`,
    [act],
  );

/** Whether a row would name a kind of the keeper's own that goes with this undo, or is gone already. */
function kindMissing(changes: readonly Change[]): Query<boolean> {
  const going = changes.flatMap(({ before, after }) =>
    before === null && after !== null && 'base' in after && after.base !== null ? [after.code] : [],
  );
  const named = changes.flatMap(({ before }) => kindNamedBy(before));
  return jsonQuery(
    `select json(iif(
       exists (select 1 from json_each(?) going where
         exists (select 1 from animal where kind = going.value)
         or exists (select 1 from planned_change where animal_kind = going.value))
       or exists (select 1 from json_each(?) named where
         not exists (select 1 from kind where code = named.value)
         and exists (select 1 from change where noun = 'kind' and code = named.value
           and coalesce(after, before) ->> '$.base' is not null)),
       'true', 'false')) as body`,
    [JSON.stringify(going), JSON.stringify(named)],
  );
}

function kindNamedBy(row: Change['before']): readonly string[] {
  if (row === null) return [];
  if ('animalKind' in row) return [row.animalKind];
  return 'gaugeMm' in row ? [row.kind] : [];
}
