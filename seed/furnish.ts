/** Sets up the demo room: settings, rooms, animals and the larder, before its history begins. */
import { addBin, addRoom, type Context, editSettings, importRows, startCup } from '../src/actions/index.ts';
import { civilDate, type DayNumber } from '../src/husbandry/calendar.ts';
import { ok, type Result } from '../src/husbandry/result.ts';
import { LODGERS } from './animals.ts';
import { asOf } from './as-of.ts';
import type { Codes } from './codes.ts';
import { BINS, type BinName, CUPS, type CupName } from './larder.ts';
import { ROOMS, type RoomName, SHELVES } from './places.ts';
import { weekdaysOf } from './weekdays.ts';

/** Fed on five evenings a week, tonight and yesterday among them. */
const FED_DAYS_AHEAD = [0, 1, 2, 5, 6];
/** Parcels come on four weekdays. */
const DELIVERED_DAYS_AHEAD = [1, 2, 4, 5];
const LEAD_TIME_DAYS = 3;
const HOUR_WORTH = '10';
const AWAY_IN_DAYS = { from: 14, to: 17 } as const;
/** Before the history begins every animal was fed on one of so many days. */
const FED_WITHIN_DAYS = 7;

type Rooms = ReadonlyMap<RoomName, string>;

/** Settings, which stay the keeper's where they were set before. */
export function settle(context: Context): Promise<Result<unknown>> {
  const { today } = context.clock();
  return editSettings(context, {
    feedingWeekdays: weekdaysOf(today, FED_DAYS_AHEAD),
    absences: [{ from: civilDate(today + AWAY_IN_DAYS.from), to: civilDate(today + AWAY_IN_DAYS.to) }],
    deliveryWeekdays: weekdaysOf(today, DELIVERED_DAYS_AHEAD),
    leadTimeDays: LEAD_TIME_DAYS,
    purse: { currency: 'EUR', hour: HOUR_WORTH },
    demo: true,
  });
}

/** Rooms, animals and bins as of the first day; cups are started on their own days. */
export async function furnish(context: Context, start: DayNumber): Promise<Result<Codes>> {
  const then = asOf(context, start);
  const rooms = await addRooms(then);
  if (!rooms.ok) return rooms;
  const animals = await addAnimals(then, rooms.value);
  if (!animals.ok) return animals;
  const bins = await addBins(then, rooms.value);
  if (!bins.ok) return bins;
  const cups = await startCups(context, rooms.value);
  if (!cups.ok) return cups;
  return ok({ animals: animals.value, bins: new Map([...bins.value, ...cups.value]) });
}

async function addRooms(then: Context): Promise<Result<Rooms>> {
  const codes = new Map<RoomName, string>();
  for (const room of ROOMS) {
    const added = await addRoom(then, { ...room, demo: true });
    if (!added.ok) return added;
    codes.set(room.name, added.value.reply.room);
  }
  return ok(codes);
}

async function addAnimals(then: Context, rooms: Rooms): Promise<Result<Codes['animals']>> {
  const { today } = then.clock();
  const fresh = animalsOf(rooms).map((animal, at) => ({
    ...animal,
    gaugeDay: civilDate(today),
    lastFed: civilDate(today - 1 - (at % FED_WITHIN_DAYS)),
  }));
  const added = await importRows(then, { animals: { new: fresh, changed: [] } });
  if (!added.ok) return added;
  return ok(new Map(fresh.map(({ name }, at) => [name, added.value.reply.animals[at] as string])));
}

const animalsOf = (rooms: Rooms) =>
  SHELVES.flatMap(({ shelf, room }) => {
    const here = LODGERS.filter((each) => each.shelf === shelf).flatMap(({ animals, ...shared }) =>
      animals.map(([name, gaugeMm]) => ({ ...shared, name, gaugeMm, room: rooms.get(room) as string })),
    );
    return here.map((animal, at) => ({ ...animal, shelfPosition: at + 1, demo: true }));
  });

async function addBins(then: Context, rooms: Rooms): Promise<Result<ReadonlyMap<BinName, string>>> {
  const codes = new Map<BinName, string>();
  for (const { room, ...bin } of BINS) {
    const added = await addBin(then, { ...bin, room: rooms.get(room) as string, demo: true });
    if (!added.ok) return added;
    codes.set(bin.name, added.value.reply.bin);
  }
  return ok(codes);
}

async function startCups(context: Context, rooms: Rooms): Promise<Result<ReadonlyMap<CupName, string>>> {
  const { today } = context.clock();
  const codes = new Map<CupName, string>();
  for (const { name, species, daysAgo } of CUPS) {
    const room = rooms.get('Warm room') as string;
    const started = await startCup(asOf(context, today - daysAgo), { name, species, room, demo: true });
    if (!started.ok) return started;
    codes.set(name, started.value.reply.bin);
  }
  return ok(codes);
}
