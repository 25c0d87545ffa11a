/** One bin as it stands today: how many, how large, and when somebody last looked. */
import type { DayNumber } from '../calendar.ts';
import type { Bin } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { BinAnswer, Spread } from './answer.ts';
import { binNow } from './holding.ts';
import { shelvesOf } from './shelf-stock.ts';
import { headsKnown } from './stock-bin.ts';
import { spreadOf } from './summary.ts';

/** A count, and how many were expected before it was known. */
export interface CountTaken {
  readonly day: DayNumber;
  readonly heads: number;
  readonly expected: Spread;
}

export type BinToday = Pick<BinAnswer, 'headsNow' | 'lookedDaysAgo' | 'lengthsNow'>;

/** Without the days ahead, so that it is told at once; of the lengths, those that may be fed. */
export function binToday(snapshot: Snapshot, bin: Bin): BinToday {
  const stock = binNow(snapshot, bin);
  const { lookedOn } = stock.state;
  const [shelf] = shelvesOf({ ...snapshot, bins: [{ ...bin, reserved: false }] });
  const lengths = (shelf?.slices ?? []).filter(({ heads }) => heads > 0).map(({ lengthMm }) => lengthMm);
  return {
    headsNow: headsKnown(stock),
    lookedDaysAgo: lookedOn === null ? null : snapshot.today - lookedOn,
    lengthsNow: lengths.length > 0 ? spreadOf(lengths) : { low: 0, mid: 0, high: 0 },
  };
}

/** The last count of a bin of which something was known before; null where there is none. */
export function lastCount(snapshot: Snapshot, bin: Bin): CountTaken | null {
  const at = bin.events.findLastIndex(({ kind }) => kind === 'counted');
  const count = bin.events[at];
  if (count?.kind !== 'counted' || bin.role === 'cup') return null;
  const before = { ...bin, events: bin.events.slice(0, at) };
  const expected = headsKnown(binNow({ ...snapshot, today: count.day }, before));
  return expected.high < 1 ? null : { day: count.day, heads: count.heads, expected };
}
