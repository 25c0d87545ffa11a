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

/** Sizes from the largest down, with what a stock so many times the stationary one has growing above each. */
export function sizesOf(
  breeding: Breeding,
  { wanted, stock, times }: { wanted: readonly Wanted[]; stock: BreedingStock; times: number },
): Size[] {
  return [...wanted]
    .sort((a, b) => b.toMm - a.toMm)
    .map((size) => {
      const share = sizedShare(breeding.chain, size);
      const above = share.findLastIndex((part) => part > 0) + 1;
      const growing = totalHeads(stock.standing.slice(0, breeding.firstAdult), above);
      return { heads: size.heads, share, above, growing: growing * times };
    });
}
