/** Rooms and bins and their temperatures. */
import type { DayNumber } from './calendar.ts';
import { type Bin, type Climate, changingClimate, steadyClimate, type Where } from './larder/index.ts';
import type { DayTemp } from './prey/index.ts';
import type { Room, Snapshot } from './snapshot.ts';

function roomOf(rooms: readonly Room[], code: string): Room {
  const room = rooms.find((each) => each.code === code);
  if (!room) throw new Error(`there is no room ${code}`);
  return room;
}

const between = (a: number, b: number): DayTemp => ({ minC: Math.min(a, b), maxC: Math.max(a, b) });

/** The day's temperatures in a room, as it is set. */
export function roomTemp(rooms: readonly Room[], code: string): DayTemp {
  const room = roomOf(rooms, code);
  return between(room.dayTempC, room.nightTempC);
}

/** Rooms in use, and those a bin may have stood in before they were removed. */
export type Places = Pick<Snapshot, 'rooms' | 'removedRooms'>;

/** What a bin lives through: where it stood on each day, measured where there is a series, else as set. */
export function binClimate(places: Places, bin: Pick<Bin, 'room' | 'ownC' | 'events'>): Climate {
  const rooms = [...places.rooms, ...(places.removedRooms ?? [])];
  const now: Where = { room: bin.room, ownC: bin.ownC ?? null };
  const moves = bin.events.filter((event) => event.kind === 'placed');
  if (moves.length === 0) return climateAt(rooms, now);
  const past = moves.map(({ day, before }) => ({ until: day, climate: climateAt(rooms, before) }));
  const last = climateAt(rooms, now);
  return changingClimate((day) => (past.find(({ until }) => day < until)?.climate ?? last).on(day));
}

/** The climate of one place for all time. */
export function climateAt(rooms: readonly Room[], { room: code, ownC }: Where): Climate {
  if (ownC) return steadyClimate(between(ownC.dayC, ownC.nightC));
  const { series } = roomOf(rooms, code);
  const set = roomTemp(rooms, code);
  if (!series || series.minC.length === 0) return steadyClimate(set);
  return changingClimate((day) => measuredOn(series, day) ?? set);
}

function measuredOn({ from, minC, maxC }: NonNullable<Room['series']>, day: DayNumber): DayTemp | null {
  const [least, most] = [minC[day - from], maxC[day - from]];
  return least == null || most == null ? null : { minC: least, maxC: most };
}
