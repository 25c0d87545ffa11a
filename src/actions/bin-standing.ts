/** How a bin stands on a day, inside the transaction of an act that takes from it. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Bin } from '../husbandry/larder/index.ts';
import type { Setting } from '../husbandry/supply/index.ts';
import { type BinRow, binEvents, rowsOf } from '../store/index.ts';
import { binOf, placesOf } from './load-snapshot.ts';
import type { Scene } from './perform.ts';

export async function settingOn({ tx, facts }: Scene, day: DayNumber): Promise<Setting> {
  return { today: day, facts, ...placesOf(await tx.ask(rowsOf('room'))) };
}

/** The bin with its record up to a day. */
export async function recordOf({ tx, facts }: Scene, row: BinRow, day: DayNumber): Promise<Bin> {
  const events = await tx.ask(binEvents(day, facts.policy.learnDays.value));
  return binOf(
    row,
    events.filter(({ bin }) => bin === row.code),
  );
}
