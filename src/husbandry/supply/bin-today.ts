/** One bin as it stands today: how many, how large, and when somebody last looked. */
import type { Bin } from '../larder/index.ts';
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
  const [shelf] = shelvesOf({ ...snapshot, bins: [{ ...bin, reserved: false }] });
  const lengths = (shelf?.slices ?? []).filter(({ heads }) => heads > 0).map(({ lengthMm }) => lengthMm);
  return {
    headsNow: headsKnown(stock),
    lookedDaysAgo: lookedOn === null ? null : snapshot.today - lookedOn,
    learned: learnedOf(stock),
    lengthsNow: lengths.length > 0 ? spreadOf(lengths) : { low: 0, mid: 0, high: 0 },
  };
}
