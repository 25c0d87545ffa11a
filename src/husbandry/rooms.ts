/** Rooms and their temperatures. */
import type { DayTemp } from './prey/index.ts';
import type { Room } from './snapshot.ts';

/** The day's temperatures in a room. */
export function roomTemp(rooms: readonly Room[], code: string): DayTemp {
  const room = rooms.find((each) => each.code === code);
  if (!room) throw new Error(`there is no room ${code}`);
  return { minC: Math.min(room.dayTempC, room.nightTempC), maxC: Math.max(room.dayTempC, room.nightTempC) };
}
