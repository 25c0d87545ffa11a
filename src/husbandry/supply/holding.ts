/** What a bin holds of some lengths on a day: what may be taken out of it, and the lots in which it goes. */
import { type Bin, everySize, headsWithin, type LengthRange, type Lot, lotsTaken } from '../larder/index.ts';
import { headsKnown, type Setting, type StockBin, stockBin } from './stock-bin.ts';

export interface Holding {
  /** Heads of these lengths, as best known; and no more than so many in 19 cases of 20. */
  readonly there: number;
  readonly most: number;
  /** So many of them, with their lengths. */
  readonly lots: (heads: number) => readonly Lot[];
}

/** One bin on the setting's day. */
export const binNow = (setting: Setting, bin: Bin): StockBin =>
  stockBin(setting, bin, [...setting.facts.species.values()]);

/** What is in it of these lengths; of all lengths where null. */
export function holdingOf(setting: Setting, stock: StockBin, lengths: LengthRange | null): Holding {
  const { chain, state } = stock;
  const range = lengths ?? everySize(chain);
  const there = headsWithin(chain, state.heads, range);
  const known = headsKnown(stock);
  const doubt = known.mid > 0 ? known.high / stock.heads : 1;
  const parts = setting.facts.policy.lotParts.value;
  return {
    there,
    most: there * Math.max(1, doubt),
    lots: (heads) => lotsTaken(chain, state.heads, { taking: { ...range, heads }, parts }),
  };
}
