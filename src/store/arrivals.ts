/** Orders as they came: each box with what was ordered and what arrived, and each line of it as it was written down. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Arrival, Spent } from '../husbandry/orders/index.ts';
import type { Mm } from '../husbandry/units.ts';
import type { EntryDetails } from './entries.ts';
import { jsonQuery, type Query } from './query.ts';

/** What the journal says of a delivery: as it came, and what was corrected later. */
const OF_DELIVERY = `entry e indexed by entry_delivery
  on e.details ->> '$.delivery' = d.code and e.voided = 0 and e.kind in ('delivered', 'moved in', 'moved out')`;
const ALIVE = `iif(e.kind = 'moved out', -e.heads, e.heads)`;
const DEAD = `coalesce(e.details ->> '$.dead', 0)`;

/** Every box that came in the years before a day, as one arrival; lines that nobody had ordered are left out. */
export const arrivalsUpTo = (day: DayNumber): Query<readonly Arrival[]> =>
  jsonQuery(
    `with line as (
       select d.purchase, d.code, max(d.heads) as ordered, sum(${ALIVE}) as alive, sum(${DEAD}) as dead,
         min(e.civil_day) as came, max(e.details ->> '$.counted' = 'label') as label
       from delivery d join ${OF_DELIVERY}
       where d.purchase is not null and d.state = 'arrived' and d.heads > 0 and e.civil_day <= ?
       group by d.code)
     select json_group_array(json_object('supplier', supplier, 'ordered', ordered, 'alive', alive, 'dead', dead,
       'due', due, 'came', came, 'counted', json(iif(label, 'false', 'true')))) as body
     from (
       select p.supplier, p.due_day as due, sum(ordered) as ordered, sum(alive) as alive, sum(dead) as dead,
         min(came) as came, max(coalesce(label, 0)) as label
       from line join purchase p on p.code = line.purchase group by p.code order by min(came), p.code)`,
    [day],
  );

/** Orders placed after a day and up to another, with their postage; those called off are left out. */
export const spentBetween = (after: DayNumber, to: DayNumber): Query<readonly Spent[]> =>
  jsonQuery(
    `select json_group_array(json_object('day', placed_day, 'cents', cents)) as body
     from (select p.placed_day, p.postage_cents + coalesce(sum(d.cents), 0) as cents
       from purchase p left join delivery d on d.purchase = p.code and d.state <> 'cancelled'
       where p.state <> 'cancelled' and p.placed_day > ? and p.placed_day <= ?
       group by p.code order by p.placed_day, p.code)`,
    [after, to],
  );

/** A delivery of an order as the journal has it now. */
export interface ArrivedLine {
  readonly delivery: string;
  readonly purchase: string;
  /** Bin it went into; of another species where that came. */
  readonly bin: string;
  readonly day: DayNumber;
  readonly alive: number;
  readonly dead: number;
  /** Alive and dead as they were first written down. */
  readonly first: { readonly alive: number; readonly dead: number };
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly counted: NonNullable<EntryDetails['counted']>;
  /** Standard error of the heads; null where they were counted one by one, or not at all. */
  readonly give: number | null;
  readonly at: string | null;
  /** Null where none was dead. */
  readonly warmed: boolean | null;
  /** The dead were looked at again. */
  readonly again: boolean;
  /** Number of the entry by which it came. */
  readonly entry: number;
}

/** Lines that came, the latest first; each row is the entry by which it came, beside the sums. */
export const arrivedLines: Query<readonly ArrivedLine[]> = jsonQuery(
  `select json_group_array(json_object('delivery', code, 'purchase', purchase, 'bin', bin, 'day', civil_day,
     'alive', alive, 'dead', dead, 'first', json_object('alive', heads, 'dead', coalesce(details ->> '$.dead', 0)),
     'fromMm', from_mm, 'toMm', to_mm, 'counted', details ->> '$.counted', 'give', details ->> '$.give',
     'at', details ->> '$.at', 'warmed', json(details -> '$.warmed'),
     'again', json(iif(written > 1, 'true', 'false')), 'entry', entry)) as body
   from (select * from (
     select d.code, d.purchase, e.bin, e.civil_day, e.heads, e.from_mm, e.to_mm, e.details, min(e.id) as entry,
       sum(${ALIVE}) as alive, sum(${DEAD}) as dead, count(*) as written
     from delivery d join ${OF_DELIVERY}
     where d.purchase is not null and d.state = 'arrived' group by d.code)
     order by civil_day desc, cast(substr(code, 2) as integer))`,
);
