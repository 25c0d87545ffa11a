/** Brings in a keeper's list of animals: a dry run shows each row, a run writes all of them as one act. */
import type { Animal } from '../husbandry/animals/index.ts';
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import type { Result } from '../husbandry/result.ts';
import {
  type AnimalEntry,
  type ExistingAnimal,
  type Reading,
  type RowReading,
  readAnimals,
} from '../intake/index.ts';
import { type AnimalRow, rowsOf } from '../store/index.ts';
import type { Context } from './context.ts';
import { factsNow } from './facts-now.ts';
import { type Imported, type ListGiven, writeReading } from './import-list.ts';
import { inRooms } from './import-places.ts';
import { loadSnapshot } from './load-snapshot.ts';

export async function importAnimals(
  context: Context,
  given: ListGiven,
): Promise<Result<Imported<AnimalEntry>>> {
  const rooms = await context.store.ask(rowsOf('room', { where: 'closed = 0' }));
  const read = readAnimals(given.bytes, {
    ...given.options,
    today: context.clock().today,
    kinds: [...(await factsNow(context)).kinds.values()],
    existing: await collectionOf(context, new Map(rooms.map(({ code, name }) => [code, name]))),
  });
  return writeReading(context, given, { reading: inRooms(read, rooms), rowsFrom });
}

/** Everybody on record, those who left too: an old list does not bring them back. */
async function collectionOf(
  context: Context,
  rooms: ReadonlyMap<string, string>,
): Promise<readonly ExistingAnimal[]> {
  const rows = await context.store.ask(rowsOf('animal', { order: 'cast(substr(code, 2) as integer)' }));
  const living = new Map((await loadSnapshot(context)).animals.map((animal) => [animal.code, animal]));
  return rows.map((row) => existing(row, rooms.get(row.room) ?? row.room, living.get(row.code)));
}

const existing = (row: AnimalRow, room: string, animal: Animal | undefined): ExistingAnimal => ({
  code: row.code,
  gone: row.leftDay !== null,
  label: row.label === '' ? null : row.label,
  name: row.name,
  kind: row.kind,
  count: row.count,
  sex: row.sex,
  matured: row.matured,
  stageOverride: row.stageOverride,
  gaugeMm: row.gaugeMm,
  gaugeAssumed: row.gaugeAssumed,
  lastFed: animal?.lastTaken ?? null,
  lastMoult: animal?.lastMoult?.found ?? null,
  shelf: row.shelf,
  room,
  notes: row.notes,
});

const dated = (day: DayNumber | null): string | null => (day === null ? null : civilDate(day));

const rowsFrom = ({ rows }: Reading<AnimalEntry>) => ({
  animals: {
    new: rows.flatMap((row) =>
      row.verdict === 'new' && row.becomes !== null ? added(row.becomes, row.row) : [],
    ),
    changed: rows.flatMap((row) => (row.verdict === 'changed' ? changed(row) : [])),
  },
});

/** Rows keep the order of the list on their shelf. */
const added = ({ lastFed, lastMoult, label, ...entry }: AnimalEntry, row: number) => ({
  ...entry,
  label: label ?? '',
  shelfPosition: row,
  lastFed: dated(lastFed),
  lastMoult: dated(lastMoult),
});

/** Only the fields that change. */
function changed({ code, becomes, changes }: RowReading<AnimalEntry>) {
  if (code === null || becomes === null) return [];
  const all = { ...becomes, label: becomes.label ?? '' };
  const dates = { lastFed: dated(becomes.lastFed), lastMoult: dated(becomes.lastMoult) };
  const named = new Set(changes.map(({ field }) => field));
  const fields = Object.fromEntries(
    Object.entries({ ...all, ...dates }).filter(([field]) => named.has(field)),
  );
  return [{ code, fields }];
}
