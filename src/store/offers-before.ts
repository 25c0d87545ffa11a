/** What became of the meals before an evening, for those who were offered something on it. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { MealOutcome } from './entries.ts';
import { jsonQuery, type Query } from './query.ts';

export interface OutcomesBefore {
  readonly animal: string;
  /** Newest first; meals nobody has told of are left out. */
  readonly outcomes: readonly MealOutcome[];
}

const MEALS_READ = 24;

/** Outcomes count whenever they were written down, also after the evening. */
export const outcomesBefore = (evening: DayNumber): Query<readonly OutcomesBefore[]> => ({
  ...jsonQuery<readonly OutcomesBefore[]>(
    `select json_group_array(json_object('animal', a.code, 'outcomes', json((
       select json_group_array(outcome) from (
         select coalesce((select x.kind from entry x where x.about = o.id and x.voided = 0
           order by x.id desc limit 1), o.details ->> '$.outcome') as outcome
         from entry o where o.animal = a.code and o.voided = 0 and o.kind = 'offered' and o.civil_day < :evening
         order by o.civil_day desc, o.id desc limit ${MEALS_READ})
       where outcome is not null)))) as body
     from animal a where a.left_day is null and exists (
       select 1 from entry e
       where e.animal = a.code and e.voided = 0 and e.kind = 'offered' and e.civil_day = :evening)`,
  ),
  args: { evening },
});
