/** One bin as it stands today: how many, how large, when somebody last looked, and what its record has taught. */
import { type Bin, KEPT_MM } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { BinAnswer } from './answer.ts';
import { type BinGoes, binsGo } from './bin-goes.ts';
import { binNow } from './holding.ts';
import { shelvesOf } from './shelf-stock.ts';
import { headsKnown } from './stock-bin.ts';
import { learnedOf, spreadOf } from './summary.ts';

export type BinToday = Pick<BinAnswer, 'headsNow' | 'lookedDaysAgo' | 'lengthsNow' | 'learned'>;

export interface BinTold {
  readonly now: BinToday;
  /** Null of cups and of what is not alive. */
  readonly goes: BinGoes | null;
}

/** What a bin's page tells at once; null where there is no such bin. */
export function binTold(snapshot: Snapshot, code: string): BinTold | null {
  const bin = snapshot.bins.find((each) => each.code === code);
  if (bin === undefined) return null;
  return { now: binToday(snapshot, bin), goes: binsGo(snapshot, [bin])[0] ?? null };
}

/** Without the days ahead, so that it is told at once; of the lengths, those that may be fed. */
export function binToday(snapshot: Snapshot, bin: Bin): BinToday {
  const stock = binNow(snapshot, bin);
  const { lookedOn } = stock.state;
  return {
    headsNow: headsKnown(stock),
    lookedDaysAgo: lookedOn === null ? null : snapshot.today - lookedOn,
    learned: learnedOf(stock, snapshot.facts.policy),
    lengthsNow: lengthsOn(snapshot, bin),
  };
}

function lengthsOn(snapshot: Snapshot, bin: Bin): BinToday['lengthsNow'] {
  const [shelf] = shelvesOf({ ...snapshot, bins: [{ ...bin, restsUntil: null }] });
  const lengths = (shelf?.slices ?? [])
    .map(({ lengthMm }) => lengthMm)
    .filter((mm) => mm > 0 && mm < KEPT_MM);
  return lengths.length > 0 ? spreadOf(lengths) : { low: 0, mid: 0, high: 0 };
}
