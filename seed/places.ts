/** Where the demo room's animals live: two rooms, and shelves in the order in which they are walked. */
export const ROOMS = [
  { name: 'Warm room', dayTempC: 26, nightTempC: 23 },
  { name: 'Back room', dayTempC: 23, nightTempC: 20 },
] as const;

export type RoomName = (typeof ROOMS)[number]['name'];

export const SHELVES = [
  { shelf: 'Rack A, upper shelf', room: 'Warm room' },
  { shelf: 'Rack A, lower shelf', room: 'Warm room' },
  { shelf: 'Rack B, upper shelf', room: 'Warm room' },
  { shelf: 'Rack B, lower shelf', room: 'Warm room' },
  { shelf: 'Spiderling cabinet', room: 'Warm room' },
  { shelf: 'Window rack', room: 'Back room' },
  { shelf: 'Floor rack', room: 'Back room' },
] as const satisfies readonly { shelf: string; room: RoomName }[];

export type ShelfName = (typeof SHELVES)[number]['shelf'];
