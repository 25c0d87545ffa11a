/** Reads everything one answer depends on, from one state of the database, as of a day. */

import { factsWith } from '../facts/own/facts-with.ts';
import { type Animal, ruleOf } from '../husbandry/animals/index.ts';
import { servedOnRecord } from '../husbandry/appetite/index.ts';
import type { DayNumber, DayRange } from '../husbandry/calendar.ts';
import { grouped } from '../husbandry/grouped.ts';
import type { Bin, ExpectedDelivery } from '../husbandry/larder/index.ts';
import { atTime, noMarket, type TimeOfDay } from '../husbandry/orders/index.ts';
import type { Facts, PlannedChange, Room, Snapshot } from '../husbandry/snapshot.ts';
import { DAYS_PER_WEEK } from '../husbandry/units.ts';
import { inWalkOrder } from '../husbandry/walk.ts';
import {
  type AnimalRecord,
  type AnimalRow,
  animalRecords,
  arrivalsUpTo,
  type BinEventRow,
  type BinRow,
  binEvents,
  type DeliveryRow,
  type PlannedChangeRow,
  type RoomRow,
  revision,
  rowsOf,
  settings,
  spentBetween,
} from '../store/index.ts';
import { binEvent } from './bin-event.ts';
import { timeNow } from './clock.ts';
import type { Context } from './context.ts';
import { bookChanges } from './facts-now.ts';
import { marketOf, marketRows } from './market.ts';
import { fedFrom, givenSince } from './record.ts';
import { type Senders, sendersOf } from './senders.ts';

const questions = (day: DayNumber, learnDays: number) => ({
  revision,
  animals: rowsOf('animal', { where: 'left_day is null or left_day > ?', args: [day] }),
  records: animalRecords(day),
  bins: rowsOf('bin', { where: 'closed = 0', order: 'cast(substr(code, 2) as integer)' }),
  events: binEvents(day, learnDays),
  deliveries: rowsOf('delivery', { where: "state = 'expected'" }),
  changes: rowsOf('planned_change', { where: 'cancelled = 0' }),
  rooms: rowsOf('room'),
  settings,
  ...marketRows,
  arrivals: arrivalsUpTo(day),
  spent: spentBetween(day - DAYS_PER_WEEK, day),
  placed: rowsOf('purchase', { where: "state = 'placed'" }),
  ...bookChanges,
});

/**
 * The snapshot of a day; by default of today. The seed is the day, so that answers of one day share their dice. As long
 * as nothing changes today's is the very same, with all that was worked out of it.
 */
export async function loadSnapshot(context: Context, day?: DayNumber): Promise<Snapshot> {
  const { store, facts: book, clock } = context;
  const now = timeNow(clock());
  if (day !== undefined && day !== now.today) return readSnapshot(context, { today: day, minutes: 0 });
  const last = lastRead.get(store);
  const isLast = last?.book === book && isStill(last.snapshot, now);
  if (isLast && last.snapshot.revision === (await store.ask(revision))) return last.snapshot;
  const snapshot = await readSnapshot(context, now);
  lastRead.set(store, { book, snapshot });
  return snapshot;
}

const lastRead = new WeakMap<Context['store'], { readonly book: Facts; readonly snapshot: Snapshot }>();

/** Whether it is the same day and no supplier's hour of ordering has passed since. */
const isStill = ({ today, market = noMarket }: Snapshot, now: TimeOfDay): boolean =>
  today === now.today &&
  market.suppliers.every((supplier) => atTime(supplier, now).tooLateOn === supplier.tooLateOn);

async function readSnapshot({ store, facts: book }: Context, now: TimeOfDay): Promise<Snapshot> {
  const { today } = now;
  const found = await store.askAll(questions(today, book.policy.learnDays.value));
  const facts = factsWith(book, found);
  const senders = sendersOf(found, facts.policy);
  const { feedingWeekdays, absences, deliveryWeekdays, leadTimeDays, walk } = found.settings;
  return {
    today,
    revision: found.revision,
    seed: today,
    animals: animalsOf(inWalkOrder(found.animals, walk), found.records, {
      facts,
      today,
      fasts: fastsOf(found.changes),
    }),
    bins: binsOf(found.bins, found.events),
    deliveries: found.deliveries.map((row) => expectedFrom(row, senders)),
    changes: found.changes.map(planned),
    ...placesOf(found.rooms),
    calendar: { feedingWeekdays, absences },
    deliveryWeekdays,
    leadTimeDays,
    market: marketOf(found, facts, now),
    facts,
  };
}

/** The rooms in use, and those that were removed. */
export function placesOf(rows: readonly RoomRow[]): Pick<Snapshot, 'rooms' | 'removedRooms'> {
  const of = (closed: boolean) =>
    rows.filter((row) => row.closed === closed).map(({ demo: _, closed: _closed, ...room }): Room => room);
  return { rooms: of(false), removedRooms: of(true) };
}

interface AsOf {
  readonly facts: Facts;
  readonly today: DayNumber;
  readonly fasts: ReadonlyMap<string, DayRange>;
}

/** Fasts of mothers that guard a sac, by the mother's code. */
function fastsOf(changes: readonly PlannedChangeRow[]): ReadonlyMap<string, DayRange> {
  const fasts = changes.flatMap(({ animal, sac }) =>
    animal === null || sac === null || sac.motherFasts === null ? [] : [[animal, sac.motherFasts] as const],
  );
  return new Map(fasts.sort(([, a], [, b]) => a.to - b.to));
}

/** Animals of kinds that are in the Book, in the order given. */
function animalsOf(
  rows: readonly AnimalRow[],
  records: readonly AnimalRecord[],
  { facts, today, fasts }: AsOf,
): readonly Animal[] {
  const byCode = new Map(records.map((record) => [record.code, record]));
  return rows.flatMap((row) => {
    const kind = facts.kinds.get(row.kind);
    const record = byCode.get(row.code);
    if (kind === undefined || record === undefined) return [];
    const waitAfterMoultDays = ruleOf(kind, row).waitAfterMoultDays.value;
    const fasting = fasts.get(row.code);
    return {
      ...livingIn(row),
      ...fedFrom(record, { today, waitAfterMoultDays }),
      givenOnRecord: servedOnRecord(kind, row, { given: givenSince(record, row.gaugeDay), facts }),
      ...(fasting === undefined ? {} : { fasts: fasting }),
    };
  });
}

const livingIn = (row: AnimalRow) => ({
  code: row.code,
  name: row.name,
  kind: row.kind,
  count: row.count,
  sex: row.sex,
  matured: row.matured,
  gaugeMm: row.gaugeMm,
  gaugeAssumed: row.gaugeAssumed,
  room: row.room,
  shelf: row.shelf,
  stageOverride: row.stageOverride,
});

function binsOf(rows: readonly BinRow[], events: readonly BinEventRow[]): readonly Bin[] {
  const eventsOf = grouped(events, ({ bin }) => bin);
  return rows.map((row) => binOf(row, eventsOf.get(row.code) ?? []));
}

/** A bin with its record, without what only the keeper's lists need. */
export const binOf = (
  { notes: _, closed: _closed, demo: _demo, ...bin }: BinRow,
  events: readonly BinEventRow[],
): Bin => ({ ...bin, events: events.map(binEvent) });

const expectedFrom = (
  { code, species, bin, heads, fromMm, toMm, day, purchase }: DeliveryRow,
  senders: Senders,
): ExpectedDelivery => {
  const sender = senders.get(purchase ?? '');
  const expected = { code, species, bin, lot: { heads, fromMm, toMm }, day };
  if (purchase === null) return expected;
  return { ...expected, order: purchase, ...(sender === undefined ? {} : { sender }) };
};

const planned = ({
  fromDay,
  toDay,
  cancelled: _,
  demo: _demo,
  ...change
}: PlannedChangeRow): PlannedChange => ({
  ...change,
  from: fromDay,
  to: toDay,
});
