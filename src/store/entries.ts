/** The journal of what was seen and done: entries are added and voided, never changed or deleted. */

import type { DayNumber } from '../husbandry/calendar.ts';
import type { BinEvent, Sample, Where } from '../husbandry/larder/index.ts';
import type { Mm } from '../husbandry/units.ts';
import { jsonQuery, type Query, type Tx } from './query.ts';

export type MealOutcome = 'taken' | 'part-taken' | 'refused';
export type AnimalEntryKind =
  | 'offered'
  | MealOutcome
  | 'skipped'
  | 'premoult'
  | 'moulted'
  | 'measured'
  | 'matured'
  | 'died'
  | 'came back';
export type BinEntryKind = Exclude<BinEvent['kind'], 'offered'>;

/** What only some kinds carry. */
export interface EntryDetails {
  readonly dead?: number;
  readonly delivery?: string;
  /** How the heads that came were told: counted whole or in part, weighed, or read off the label. */
  readonly counted?: 'whole' | 'part' | 'sample' | 'weighed' | 'label';
  /** Standard error of those heads. */
  readonly give?: number;
  /** 'HH:MM' at which a box came. */
  readonly at?: string;
  /** The box had stood warm for an hour or more before its dead were counted. */
  readonly warmed?: boolean;
  /** Outcome of an offer already known when it was written down. */
  readonly outcome?: MealOutcome;
  readonly level?: string;
  readonly look?: string;
  readonly massMg?: number;
  readonly preKilled?: boolean;
  readonly portions?: number;
  /** Came from the button that records the rest, not from a mark by hand. */
  readonly bulk?: boolean;
  /** Last day seen unmoulted. */
  readonly earliest?: DayNumber;
  readonly gaugeMm?: Mm;
  readonly sample?: Sample | null;
  readonly females?: number;
  readonly males?: number;
  /** Of the heads counted, those that were grown. */
  readonly grown?: number;
  /** Where a bin stood before it was placed, and after. */
  readonly before?: Where;
  readonly after?: Where;
  readonly eggsLost?: number;
}

export interface EntryInput {
  readonly day: DayNumber;
  readonly kind: AnimalEntryKind | BinEntryKind;
  readonly animal?: string;
  /** The bin seen, or the bin the prey offered came from. */
  readonly bin?: string;
  /** The offer an outcome belongs to. */
  readonly about?: number;
  readonly heads?: number;
  readonly fromMm?: Mm | null;
  readonly toMm?: Mm | null;
  readonly details?: EntryDetails;
}

/** Adds entries of one act, in order. */
export async function addEntries(tx: Tx, act: number, entries: readonly EntryInput[]): Promise<void> {
  if (entries.length === 0) return;
  await tx.run(
    `insert into entry (act, civil_day, kind, animal, bin, about, heads, from_mm, to_mm, details)
     select ?, json_extract(value, '$.day'), json_extract(value, '$.kind'), json_extract(value, '$.animal'),
       json_extract(value, '$.bin'), json_extract(value, '$.about'), json_extract(value, '$.heads'),
       json_extract(value, '$.fromMm'), json_extract(value, '$.toMm'),
       coalesce(json_extract(value, '$.details'), '{}')
     from json_each(?) order by key`,
    [act, JSON.stringify(entries)],
  );
}

/** An offer of one evening, with the outcome written about it so far. */
export interface OfferLine {
  readonly id: number;
  readonly animal: string;
  readonly bin: string | null;
  readonly heads: number | null;
  readonly fromMm: Mm | null;
  readonly toMm: Mm | null;
  readonly outcome: MealOutcome | null;
  /** The outcome was marked by hand, not by the button that closes the rest. */
  readonly byHand: boolean;
}

/** Those of an offer's animals that live here still. */
const OF_THE_LIVING = 'exists (select 1 from animal a where a.code = o.animal and a.left_day is null)';

/** What was offered on an evening to those who are here, in the order written. */
export const offersOf = (evening: DayNumber): Query<readonly OfferLine[]> =>
  jsonQuery(
    `select json_group_array(json_object('id', id, 'animal', animal, 'bin', bin, 'heads', heads,
       'fromMm', from_mm, 'toMm', to_mm, 'outcome', outcome,
       'byHand', json(iif(outcome is not null and not bulk, 'true', 'false')))) as body from (
       select o.*, coalesce((select kind from entry x where x.about = o.id and x.voided = 0
         order by x.id desc limit 1), o.details ->> '$.outcome') as outcome,
         coalesce((select x.details ->> '$.bulk' from entry x where x.about = o.id and x.voided = 0
         order by x.id desc limit 1), 0) as bulk
       from entry o where o.civil_day = ? and o.kind = 'offered' and o.voided = 0 and ${OF_THE_LIVING} order by o.id)`,
    [evening],
  );

/** Animals on record of whose meal on this evening something is written: offered, or not. */
export const roundDone = (evening: DayNumber): Query<readonly string[]> =>
  jsonQuery(
    `select json_group_array(distinct animal) as body from entry
     where civil_day = ? and kind in ('offered', 'skipped') and voided = 0
       and animal in (select code from animal)`,
    [evening],
  );

/** The latest evening, up to a day, with an offer nobody has closed; null when all are closed. */
export const openEvening = (upTo: DayNumber): Query<DayNumber | null> =>
  jsonQuery(
    `select json(coalesce((select civil_day from entry o
       where o.kind = 'offered' and o.voided = 0 and o.civil_day between ? and ?
         and o.details ->> '$.outcome' is null and ${OF_THE_LIVING}
         and not exists (select 1 from entry x where x.about = o.id and x.voided = 0)
       order by o.civil_day desc limit 1), 'null')) as body`,
    [upTo - DAYS_AN_OFFER_STAYS_OPEN, upTo],
  );

const DAYS_AN_OFFER_STAYS_OPEN = 7;

/** Every evening, up to a day, with an offer nobody has closed; the oldest first. */
export const openEvenings = (upTo: DayNumber): Query<readonly DayNumber[]> =>
  jsonQuery(
    `select json_group_array(civil_day) as body from (
       select distinct civil_day from entry o
       where o.kind = 'offered' and o.voided = 0 and o.civil_day between ? and ?
         and o.details ->> '$.outcome' is null and ${OF_THE_LIVING}
         and not exists (select 1 from entry x where x.about = o.id and x.voided = 0)
       order by civil_day)`,
    [upTo - DAYS_AN_OFFER_STAYS_OPEN, upTo],
  );

/** Animals found moulted on a day or later. */
export const moultedSince = (day: DayNumber): Query<readonly string[]> =>
  jsonQuery(
    `select json_group_array(distinct animal) as body from entry
     where kind = 'moulted' and voided = 0 and civil_day >= ?`,
    [day],
  );

/** The last day, up to one, on which anything was written of an animal that had it in hand; null when none. */
export const lastSeenUnmoulted = (animal: string, upTo: DayNumber): Query<DayNumber | null> =>
  jsonQuery(
    `select json(coalesce((select max(civil_day) from entry where animal = ? and voided = 0 and civil_day <= ?
       and kind in ('offered', 'skipped', 'premoult', 'measured', 'matured')), 'null')) as body`,
    [animal, upTo],
  );

/** The last day, up to one, on which an animal took prey as far as is written; null when none. */
export const lastMealTaken = (animal: string, upTo: DayNumber): Query<DayNumber | null> =>
  jsonQuery(
    `select json(coalesce((select max(civil_day) from entry o
       where o.animal = ? and o.voided = 0 and o.kind = 'offered' and o.civil_day <= ?
         and coalesce((select kind from entry x where x.about = o.id and x.voided = 0 order by x.id desc limit 1),
           o.details ->> '$.outcome', 'taken') <> 'refused'), 'null')) as body`,
    [animal, upTo],
  );
