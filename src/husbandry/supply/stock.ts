/** The larder laid out in arrays: what is alive in each bin on each day of the horizon. */
import type { PreySpecies } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { type Cohort, cohortsOf } from './cohorts.ts';
import { keptOr, type Laid, nothingLaid } from './laid.ts';
import { type StockBin, stockBin } from './stock-bin.ts';

export interface Stock {
  readonly species: readonly PreySpecies[];
  readonly bins: readonly StockBin[];
  readonly cohorts: readonly Cohort[];
  readonly totalSlices: number;
  readonly days: number;
}

/** Lays out the larder for a horizon of `days` days from the snapshot's day. */
export function stockOf(snapshot: Snapshot, days: number, laid: Laid = nothingLaid()): Stock {
  const species = [...snapshot.facts.species.values()].sort((a, b) => (a.code < b.code ? -1 : 1));
  const sorted = [...snapshot.bins].sort((a, b) => (a.code < b.code ? -1 : 1));
  const bins = sorted.map((bin) => keptOr(laid.bins, bin, () => stockBin(snapshot, bin, species)));
  const parts = bins.flatMap((bin, b) => cohortsOf(snapshot, bin, { b, days, laid }));
  let firstSlice = 0;
  const cohorts = parts.map((part) => {
    const cohort = { ...part, firstSlice };
    firstSlice += part.slices;
    return cohort;
  });
  return { species, bins, cohorts, totalSlices: firstSlice, days };
}
