/** Puts the rows of a list into rooms that are here, and leaves out changes that are not kept. */
import { type Note, type Reading, type RowReading, tallyOf } from '../intake/index.ts';
import type { RoomRow } from '../store/index.ts';
import { FIRST_ROOM } from './first-room.ts';

interface Placed {
  readonly room: string;
}

/** The reading with every room by its name here; an unknown room is noted, and the row stays where it is. */
export function inRooms<E extends Placed>(reading: Reading<E>, rooms: readonly RoomRow[]): Reading<E> {
  return withRows(
    reading,
    reading.rows.map((row) => (row.becomes === null ? row : inRoom(row, row.becomes, rooms))),
  );
}

/** The reading without changes of fields that nothing keeps. */
export const withoutChangesOf = <E>(
  reading: Reading<E>,
  isLost: (row: RowReading<E>, field: string) => boolean,
): Reading<E> =>
  withRows(
    reading,
    reading.rows.map((row) => ({ ...row, changes: row.changes.filter(({ field }) => !isLost(row, field)) })),
  );

function withRows<E>(reading: Reading<E>, rows: readonly RowReading<E>[]): Reading<E> {
  const judged = rows.map((row) =>
    row.verdict === 'changed' && row.changes.length === 0 ? { ...row, verdict: 'same' as const } : row,
  );
  return { ...reading, rows: judged, tally: tallyOf(judged) };
}

function inRoom<E extends Placed>(row: RowReading<E>, becomes: E, rooms: readonly RoomRow[]): RowReading<E> {
  const moved = row.changes.find(({ field }) => field === 'room');
  const stays = String(moved?.before ?? (row.code === null ? (rooms[0] ?? FIRST_ROOM).name : becomes.room));
  const found = roomCalled(becomes.room, rooms);
  const room = found?.name ?? stays;
  const unknown = found === undefined && becomes.room !== '' && becomes.room !== stays;
  const others = row.changes.filter((change) => change !== moved);
  return {
    ...row,
    becomes: { ...becomes, room },
    changes: moved === undefined || room === stays ? others : [...others, { ...moved, after: room }],
    notes: unknown ? [...row.notes, notHere(becomes.room, stays)] : row.notes,
  };
}

const roomCalled = (word: string, rooms: readonly RoomRow[]): RoomRow | undefined =>
  rooms.find(({ code, name }) => code === word || name.toLowerCase() === word.trim().toLowerCase());

const notHere = (word: string, stays: string): Note => ({
  code: 'room-unknown',
  sentence: `There is no room "${word}" here: it stands in ${stays}. Add the room in the settings to move it.`,
  weight: 'said',
});
