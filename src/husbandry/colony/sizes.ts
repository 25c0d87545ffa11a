/** The wanted sizes as a harvest goes by them, and what must be left to grow on above each. */
import { totalHeads } from '../larder/index.ts';
import { type Breeding, sizedShare, type Wanted } from './breeding.ts';
import type { BreedingStock } from './breeding-stock.ts';

/** A wanted size as the harvest goes by it. */
export interface Size {
  readonly heads: number;
  readonly share: Float64Array;
  /** First substage that is larger than the size. */
  readonly above: number;
  /** Heads larger than that, not yet adult, that must be growing for the breeders to be replaced. */
  readonly growing: number;
}

/** The order in which sizes are harvested: what is left of the larger decides what the smaller must leave. */
export const largestFirst = (wanted: readonly Wanted[]): Wanted[] =>
  [...wanted].sort((a, b) => b.toMm - a.toMm);

/** Sizes in the order given, with what a stock so many times the stationary one has growing above each. */
export const sizesOf = (
  breeding: Breeding,
  { wanted, stock, times }: { wanted: readonly Wanted[]; stock: BreedingStock; times: number },
): Size[] =>
  wanted.map((size) => {
    const share = sizedShare(breeding.chain, size);
    const above = share.findLastIndex((part) => part > 0) + 1;
    const growing = totalHeads(stock.standing.slice(0, breeding.firstAdult), above);
    return { heads: size.heads, share, above, growing: growing * times };
  });
