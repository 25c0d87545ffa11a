/** What is gone: animals that left, deaths in groups, bins and rooms closed, orders and plans cancelled. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Noun } from './nouns.ts';
import { jsonQuery, type Query } from './query.ts';

/** Deaths of a group, less those that came back. */
export const deathsOnRecord = (animal: string): Query<number> =>
  jsonQuery(
    `select coalesce(sum(iif(kind = 'died', heads, -heads)), 0) as body from entry
     where animal = ? and voided = 0 and kind in ('died', 'came back')`,
    [animal],
  );

/** The act by which something went. */
export interface Leaving {
  readonly noun: Noun;
  readonly code: string;
  readonly act: number;
  readonly verb: string;
  readonly day: DayNumber;
}

/** How an image says that its row is gone. */
const GONE = `(%.noun = 'animal' and %.image ->> '$.leftDay' is not null)
  or (%.noun in ('bin', 'room') and %.image ->> '$.closed' = 1)
  or (%.noun in ('delivery', 'purchase') and %.image ->> '$.state' = 'cancelled')
  or (%.noun = 'planned_change' and %.image ->> '$.cancelled' = 1)`;
const isGone = (image: string): string => GONE.replaceAll('%.image', `c.${image}`).replaceAll('%.', 'c.');

/** The last act by which each row that is gone went. */
export const leavings: Query<readonly Leaving[]> = jsonQuery(
  `select json_group_array(json_object('noun', noun, 'code', code, 'act', act, 'verb', verb, 'day', day)) as body
   from (
     select c.noun, c.code, max(a.id) as act, a.verb, a.civil_day as day
     from change c join act a on a.id = c.act
     where a.voided_at is null and a.undoes is null and c.after is not null and (${isGone('after')})
       and not coalesce((${isGone('before')}), 0)
     group by c.noun, c.code)`,
);

export interface DeathInGroup {
  readonly animal: string;
  readonly day: DayNumber;
  readonly heads: number;
  readonly act: number;
  readonly verb: string;
}

/** Deaths that left some of a group, the latest first. */
export const deathsInGroups: Query<readonly DeathInGroup[]> = jsonQuery(
  `select json_group_array(json_object('animal', animal, 'day', day, 'heads', heads, 'act', act, 'verb', verb)) as body
   from (
     select e.animal, e.civil_day as day, e.heads, e.act, a.verb
     from entry e join animal n on n.code = e.animal join act a on a.id = e.act
     where e.kind = 'died' and e.voided = 0 and n.left_day is null
     order by e.civil_day desc, e.id desc)`,
);
