/** A bin put elsewhere, or given temperatures of its own: its row, and the line of the journal that keeps its past. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Where } from '../husbandry/larder/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import type { BinRow, EntryInput } from '../store/index.ts';
import { recordOf } from './bin-standing.ts';
import type { Scene } from './perform.ts';

interface Placed {
  readonly row: BinRow;
  readonly entries: readonly EntryInput[];
}

const sameWhere = (a: Where, b: Where): boolean =>
  a.room === b.room && a.ownC?.dayC === b.ownC?.dayC && a.ownC?.nightC === b.ownC?.nightC;

/** The bin in its new place from a day on; a bin placed later than that keeps its order of places. */
export async function placedAt(
  scene: Scene,
  bin: BinRow,
  { after, day }: { after: Where; day: DayNumber },
): Promise<Result<Placed>> {
  const before: Where = { room: bin.room, ownC: bin.ownC };
  if (sameWhere(before, after)) return ok({ row: bin, entries: [] });
  const { events } = await recordOf(scene, bin, scene.now.today);
  const last = events.findLast(({ kind }) => kind === 'placed');
  if (last !== undefined && last.day > day) {
    const sentence = `${bin.name} was placed on ${spokenDay(last.day)}; give that day or a later one.`;
    return err(problem('placed-since', sentence, 'day'));
  }
  const entry: EntryInput = { day, kind: 'placed', bin: bin.code, details: { before, after } };
  return ok({ row: { ...bin, ...after }, entries: [entry] });
}
