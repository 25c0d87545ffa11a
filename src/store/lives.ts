/** One animal's whole record up to a day: every offer with what became of it, every moult, every size measured. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Mm } from '../husbandry/units.ts';
import type { MealOutcome } from './entries.ts';
import { jsonQuery, type Query } from './query.ts';

export interface MealRow {
  /** The act that wrote the offer down. */
  readonly act: number;
  readonly day: DayNumber;
  readonly species: string | null;
  readonly heads: number | null;
  readonly fromMm: Mm | null;
  readonly toMm: Mm | null;
  readonly portions: number;
  /** Null when nobody has said yet. */
  readonly outcome: MealOutcome | null;
}

interface SizeRow {
  readonly day: DayNumber;
  readonly gaugeMm: Mm;
}

export interface LifeRows {
  /** Oldest first, in the order written within a day. */
  readonly meals: readonly MealRow[];
  /** Days on which moults were found, oldest first. */
  readonly moults: readonly DayNumber[];
  /** Measured, not assumed, oldest first; of one day the last written. */
  readonly sizes: readonly SizeRow[];
}

const LIVES = 'e.animal = :code and e.voided = 0 and e.civil_day <= :day';

const OUTCOME = `coalesce((select x.kind from entry x where x.about = e.id and x.voided = 0 and x.civil_day <= :day
  and x.kind in ('taken', 'part-taken', 'refused') order by x.id desc limit 1), e.details ->> '$.outcome')`;

const MEALS = `select json_group_array(json_object('act', e.act, 'day', e.civil_day, 'species', b.species,
    'heads', e.heads, 'fromMm', e.from_mm, 'toMm', e.to_mm, 'portions', coalesce(e.details ->> '$.portions', 1),
    'outcome', ${OUTCOME}))
  from (select * from entry e where ${LIVES} and e.kind = 'offered' order by e.civil_day, e.id) e
  left join bin b on b.code = e.bin`;

const MOULTS = `select json_group_array(day) from (
  select distinct e.civil_day as day from entry e where ${LIVES} and e.kind = 'moulted' order by day)`;

/** Sizes of the journal, and those the record was given when the animal was added or changed. */
const SIZES = `select json_group_array(json_object('day', day, 'gaugeMm', gauge)) from (
  select day, gauge, max(act) from (
    select e.civil_day as day, e.details ->> '$.gaugeMm' as gauge, e.act from entry e
    where ${LIVES} and e.kind in ('moulted', 'measured') and e.details ->> '$.gaugeMm' is not null
    union all
    select c.after ->> '$.gaugeDay', c.after ->> '$.gaugeMm', c.act from change c join act a on a.id = c.act
    where c.noun = 'animal' and c.code = :code and c.after is not null and a.voided_at is null and a.undoes is null
      and not c.after ->> '$.gaugeAssumed' and c.after ->> '$.gaugeDay' <= :day
      and (c.before is null or c.before ->> '$.gaugeMm' <> c.after ->> '$.gaugeMm'
        or c.before ->> '$.gaugeAssumed' <> c.after ->> '$.gaugeAssumed'))
  group by day order by day)`;

/** The record of one animal, here or gone, as of a day. */
export const lifeOf = (code: string, day: DayNumber): Query<LifeRows> => ({
  ...jsonQuery<LifeRows>(
    `select json_object('meals', json((${MEALS})), 'moults', json((${MOULTS})), 'sizes', json((${SIZES}))) as body`,
  ),
  args: { code, day },
});
