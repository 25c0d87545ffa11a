/** One bin as it stands today: how many, how large, when somebody last looked, and what its record has taught. */
import { type Bin, KEPT_MM } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { BinAnswer, BinLearned } from './answer.ts';
import { binNow } from './holding.ts';
import { shelvesOf } from './shelf-stock.ts';
import { headsKnown } from './stock-bin.ts';
import { learnedOf, spreadOf } from './summary.ts';

export interface BinToday extends Pick<BinAnswer, 'headsNow' | 'lookedDaysAgo' | 'lengthsNow' | 'learned'> {
  /** The last count, level by eye or weighing against what was expected; null where nothing was known before. */
  readonly lastLook: Look | null;
}

type Look = BinLearned['looks'][number];

/** Without the days ahead, so that it is told at once; of the lengths, those that may be fed. */
export function binToday(snapshot: Snapshot, bin: Bin): BinToday {
  const stock = binNow(snapshot, bin);
  const { lookedOn } = stock.state;
  const learned = learnedOf(stock);
  const last = learned.looks.at(-1);
  return {
    headsNow: headsKnown(stock),
    lookedDaysAgo: lookedOn === null ? null : snapshot.today - lookedOn,
    learned,
    lastLook:
      last === undefined || last.expected.high >= 1 ? (last ?? null) : countAfresh(snapshot, bin, last),
    lengthsNow: lengthsOn(snapshot, bin),
  };
}

/** A count with sizes begins the record anew: what was expected rests on the record before it. */
function countAfresh(snapshot: Snapshot, bin: Bin, look: Look): Look | null {
  const at = bin.events.findLastIndex(({ kind, day }) => kind === 'counted' && day === look.day);
  const before = { ...bin, events: bin.events.slice(0, Math.max(0, at)) };
  const expected = headsKnown(binNow({ ...snapshot, today: look.day }, before));
  return expected.high < 1 ? null : { ...look, expected };
}

function lengthsOn(snapshot: Snapshot, bin: Bin): BinToday['lengthsNow'] {
  const [shelf] = shelvesOf({ ...snapshot, bins: [{ ...bin, reserved: false }] });
  const lengths = (shelf?.slices ?? [])
    .map(({ lengthMm }) => lengthMm)
    .filter((mm) => mm > 0 && mm < KEPT_MM);
  return lengths.length > 0 ? spreadOf(lengths) : { low: 0, mid: 0, high: 0 };
}
