/** The journal read for a day: each animal's recent record and each bin's events since its anchor, in one pass. */

import type { DayNumber } from '../husbandry/calendar.ts';
import type { CupLook, Level, Sample, Where } from '../husbandry/larder/index.ts';
import type { Mm } from '../husbandry/units.ts';
import type { BinEntryKind, MealOutcome } from './entries.ts';
import { jsonQuery, type Query } from './query.ts';

/** Offers looked back on: enough for the animal's own rhythm. */
export const OFFERS_READ = 24;
const MOULTS_READ = 6;

/** The day, what was written about it, and the prey: heads, null where it was cut up or not counted, and lengths. */
export type OfferRow = readonly [
  day: DayNumber,
  outcome: MealOutcome | null,
  heads: number | null,
  species: string | null,
  fromMm: Mm | null,
  toMm: Mm | null,
];

export interface AnimalRecord {
  readonly code: string;
  /** Newest first. */
  readonly offers: readonly OfferRow[];
  /** Newest first: last day seen unmoulted, day found. */
  readonly moults: readonly (readonly [earliest: DayNumber, found: DayNumber])[];
  /** Newest first. */
  readonly premoults: readonly DayNumber[];
}

const latest = (columns: string, kind: string, limit: number): string =>
  `(select json_group_array(${columns}) from (
     select * from entry where animal = a.code and kind = '${kind}' and voided = 0 and civil_day <= :day
     order by civil_day desc, id desc limit ${limit}) e)`;

const OUTCOME = `coalesce((select x.kind from entry x where x.about = e.id and x.voided = 0 and x.civil_day <= :day
  and x.kind in ('taken', 'part-taken', 'refused') order by x.id desc limit 1), e.details ->> '$.outcome')`;

const PREY = `iif(coalesce(e.details ->> '$.portions', 1) > 1, null, e.heads),
  (select b.species from bin b where b.code = e.bin), e.from_mm, e.to_mm`;

/** The recent record of every animal that lives here on the day. */
export const animalRecords = (day: DayNumber): Query<readonly AnimalRecord[]> => ({
  ...jsonQuery<readonly AnimalRecord[]>(
    `select json_group_array(json_object('code', a.code,
       'offers', json(${latest(`json_array(e.civil_day, ${OUTCOME}, ${PREY})`, 'offered', OFFERS_READ)}),
       'moults', json(${latest("json_array(json_extract(e.details, '$.earliest'), e.civil_day)", 'moulted', MOULTS_READ)}),
       'premoults', json(${latest('e.civil_day', 'premoult', MOULTS_READ)}))) as body
     from animal a where a.left_day is null or a.left_day > :day`,
  ),
  args: { day },
});

export interface BinEventRow {
  readonly bin: string;
  readonly day: DayNumber;
  readonly kind: BinEntryKind | 'offered';
  readonly heads: number | null;
  readonly fromMm: Mm | null;
  readonly toMm: Mm | null;
  readonly dead: number | null;
  readonly level: Level | null;
  readonly look: CupLook | null;
  readonly massMg: number | null;
  readonly sample: Sample | null;
  readonly females: number | null;
  readonly males: number | null;
  /** Of those counted. */
  readonly grown: number | null;
  readonly before: Where | null;
  readonly after: Where | null;
  /** Share of the eggs lost in a clean-out. */
  readonly eggsLost: number | null;
}

/**
 * Events of every bin in use, by day and then as written, `learnDays` and more back: from the last count before that says
 * all on its own, heads with their lengths, or none left; where it was placed, from the beginning. What was offered from
 * a bin in one act is one event.
 */
export const binEvents = (day: DayNumber, learnDays: number): Query<readonly BinEventRow[]> => ({
  ...jsonQuery<readonly BinEventRow[]>(
    `select json_group_array(json_object('bin', bin, 'day', civil_day, 'kind', kind, 'heads', heads, 'fromMm', from_mm,
       'toMm', to_mm, 'dead', details ->> '$.dead', 'level', details ->> '$.level', 'look', details ->> '$.look',
       'massMg', details ->> '$.massMg',
       'sample', json(details -> '$.sample'), 'females', details ->> '$.females', 'males', details ->> '$.males',
       'grown', details ->> '$.grown',
       'before', json(details -> '$.before'), 'after', json(details -> '$.after'),
       'eggsLost', details ->> '$.eggsLost')) as body
     from (
       with anchor as materialized (
         select b.code as bin, (
           select c.id from entry c
           where b.role <> 'cup' and c.bin = b.code and c.voided = 0 and c.civil_day <= :from and c.kind = 'counted'
             and (c.from_mm is not null or c.heads = 0)
           order by c.civil_day desc, c.id desc limit 1) as id
         from bin b where b.closed = 0),
       start as materialized (
         select anchor.bin, coalesce(e.civil_day, 0) as day, coalesce(e.id, 0) as id
         from anchor left join entry e on e.id = anchor.id),
       told as (
         select e.* from start cross join entry e
           on e.bin = start.bin and e.voided = 0 and e.civil_day between start.day and :day
         where (e.civil_day > start.day or e.id >= start.id) and e.kind <> 'placed'
         union all
         select e.* from start cross join entry e indexed by entry_placed on e.bin = start.bin
         where e.voided = 0 and e.kind = 'placed' and e.civil_day <= :day)
       select e.bin, e.civil_day, e.kind, e.details, min(e.id) as id, sum(e.heads) as heads,
         min(e.from_mm) as from_mm, max(e.to_mm) as to_mm
       from told e
       group by e.bin, e.civil_day, iif(e.kind = 'offered', -e.act, e.id)
       order by e.bin, e.civil_day, min(e.id))`,
  ),
  args: { day, from: day - learnDays },
});

/** The last lot that came into a bin or was written down with it, and the last day any came; by bin. */
export interface LotBrought {
  readonly bin: string;
  readonly heads: number;
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly came: DayNumber | null;
}

/** Counts by hand are not lots brought in: an old list read again does not turn them back. */
export const lotsBrought: Query<readonly LotBrought[]> = jsonQuery(
  `with brought as (
     select e.* from entry e join act a on a.id = e.act
     where e.voided = 0 and e.from_mm is not null
       and (e.kind = 'delivered' or (e.kind = 'counted' and a.verb in ('import-rows', 'add-bin'))))
   select json_group_array(json_object('bin', bin, 'heads', heads, 'fromMm', from_mm, 'toMm', to_mm, 'came',
     (select max(civil_day) from brought d where d.bin = l.bin and d.kind = 'delivered'))) as body
   from brought l where id = (select max(id) from brought m where m.bin = l.bin)`,
);
