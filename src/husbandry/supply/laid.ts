/** What one run has laid out and the next can use again. */
import type { Bin, CohortPath } from '../larder/index.ts';
import type { StockBin } from './stock-bin.ts';

/**
 * Bins and deliveries laid out already, for trials that change one of them: kept by the very object, for one day,
 * horizon and set of facts.
 */
export interface Laid {
  readonly bins: Map<Bin, StockBin>;
  readonly paths: Map<Bin, readonly (readonly CohortPath[])[]>;
  /** Paths of deliveries by what they have in common: where days are alike, lots of one size go one way. */
  readonly lots: Map<string, readonly (readonly CohortPath[])[]>;
}

export const nothingLaid = (): Laid => ({ bins: new Map(), paths: new Map(), lots: new Map() });

/** What is kept of a thing, or made and kept. */
export function keptOr<K, V>(kept: Map<K, V>, key: K, make: () => V): V {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = make();
  kept.set(key, made);
  return made;
}
