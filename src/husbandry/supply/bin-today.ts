/** One bin as it stands today: how many, how large, when somebody last looked, and what its record has taught. */
import { type Bin, KEPT_MM } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { BinAnswer } from './answer.ts';
import { binNow } from './holding.ts';
import { shelvesOf } from './shelf-stock.ts';
import { headsKnown } from './stock-bin.ts';
import { learnedOf, spreadOf } from './summary.ts';

export type BinToday = Pick<BinAnswer, 'headsNow' | 'lookedDaysAgo' | 'lengthsNow' | 'learned'>;

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
