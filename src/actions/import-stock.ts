/** Brings in a keeper's list of live prey: a dry run shows each row, a run writes all of them as one act. */
import { civilDate } from '../husbandry/calendar.ts';
import type { Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import {
  type ExistingStock,
  type Reading,
  type RowReading,
  readStock,
  type StockEntry,
} from '../intake/index.ts';
import { type BinRow, type LotBrought, lotsBrought, rowsOf } from '../store/index.ts';
import type { Context } from './context.ts';
import { factsNow } from './facts-now.ts';
import { type Imported, type ListGiven, writeReading } from './import-list.ts';
import { inRooms, withoutChangesOf } from './import-places.ts';
import type { importRows } from './import-rows.ts';

export async function importStock(context: Context, given: ListGiven): Promise<Result<Imported<StockEntry>>> {
  const facts = await factsNow(context);
  const rooms = await context.store.ask(rowsOf('room', { where: 'closed = 0' }));
  const read = readStock(given.bytes, {
    ...given.options,
    today: context.clock().today,
    species: [...facts.species.values()],
    existing: await larderOf(context, new Map(rooms.map(({ code, name }) => [code, name]))),
  });
  const reading = withoutChangesOf(inRooms(read, rooms), (row, field) => isLost(facts, row, field));
  return writeReading(context, given, { reading, rowsFrom });
}

/**
 * A bin has no label, whether a size was assumed is shown but not kept; a cup is known by what is seen of it, and a
 * lot nobody counted has no day.
 */
function isLost(facts: Facts, { becomes, notes }: RowReading<StockEntry>, field: string): boolean {
  if (field === 'label' || field === 'sizeAssumed') return true;
  const uncounted = notes.some(({ code }) => code === 'count-unknown');
  const cup = becomes !== null && isCup(facts, becomes);
  return (cup && field === 'lot') || ((cup || uncounted) && field === 'came');
}

const isCup = (facts: Facts, { species }: StockEntry): boolean => facts.species.get(species)?.cup != null;

async function larderOf(
  { store }: Context,
  rooms: ReadonlyMap<string, string>,
): Promise<readonly ExistingStock[]> {
  const found = await store.askAll({
    bins: rowsOf('bin', { order: 'cast(substr(code, 2) as integer)' }),
    lots: lotsBrought,
  });
  const lots = new Map(found.lots.map((lot) => [lot.bin, lot]));
  return found.bins.map((bin) => existing(bin, rooms.get(bin.room) ?? bin.room, lots.get(bin.code)));
}

const existing = (bin: BinRow, room: string, brought: LotBrought | undefined): ExistingStock => ({
  code: bin.code,
  gone: bin.closed,
  label: null,
  bin: bin.name,
  species: bin.species,
  role: bin.role,
  lot: brought === undefined ? null : { heads: brought.heads, fromMm: brought.fromMm, toMm: brought.toMm },
  sizeAssumed: false,
  came: brought?.came ?? null,
  room,
  notes: bin.notes,
});

type Lots = NonNullable<Parameters<typeof importRows>[1]['lots']>;

const rowsFrom = ({ rows }: Reading<StockEntry>) => ({
  lots: rows.flatMap((row): Lots => {
    if (row.becomes === null) return [];
    if (row.verdict === 'new') return [added(row.becomes)];
    return row.verdict === 'changed' ? changed(row, row.becomes) : [];
  }),
});

const dated = ({ came }: StockEntry): string | null => (came === null ? null : civilDate(came));

function added(entry: StockEntry) {
  const { bin, species, role, room, notes, lot } = entry;
  return { newBin: { name: bin, species, room, notes, role }, lot, came: dated(entry) };
}

/** A lot that came later is added to the bin; another number for the same lot is a count of today. */
function changed({ code, changes }: RowReading<StockEntry>, becomes: StockEntry) {
  const named = new Set(changes.map(({ field }) => field));
  const said = (field: 'room' | 'notes') => (named.has(field) ? { [field]: becomes[field] } : {});
  const fields = { ...(named.has('bin') ? { name: becomes.bin } : {}), ...said('room'), ...said('notes') };
  const lot = named.has('lot') || named.has('came') ? becomes.lot : null;
  const came = named.has('came') ? dated(becomes) : null;
  return code === null ? [] : [{ bin: code, fields, lot, came }];
}
