/** Since when something stands in the book. */
import type { DayNumber } from '../husbandry/calendar.ts';
import { jsonQuery, type Query } from './query.ts';

/** Days on which animals and bins were entered, by code. */
export const enteredOn: Query<ReadonlyMap<string, DayNumber>> = {
  ...jsonQuery(
    `select json_group_array(json_array(code, day)) as body from (
       select c.code, max(a.civil_day) as day from change c join act a on a.id = c.act
       where c.noun in ('animal', 'bin') and c.before is null and a.undoes is null and a.voided_at is null
       group by c.code)`,
  ),
  decode: (rows) => new Map(JSON.parse(String(rows[0]?.body ?? '[]')) as [string, DayNumber][]),
};
