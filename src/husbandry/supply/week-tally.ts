/** What is alive by length at the start of each week of a run, and what is eaten in it, summed over replicates. */
import { DAYS_PER_WEEK } from '../units.ts';
import type { Larder } from './larder.ts';

export interface WeekTally {
  readonly weeks: number;
  readonly bands: number;
  readonly species: number;
  /** Week of each day of the run. */
  readonly weekOf: Int32Array;
  /** Heads at [(week * species + s) * bands + band], on the week's first day before anybody is fed. */
  readonly alive: Float64Array;
  /** Heads at [week * bands + band]. */
  readonly eaten: Float64Array;
}

interface WeekTallySize {
  readonly days: number;
  readonly bands: number;
  readonly species: number;
}

/** An empty tally of the weeks that `days` days reach into. */
export function weekTally({ days, bands, species }: WeekTallySize): WeekTally {
  const weeks = Math.ceil(days / DAYS_PER_WEEK);
  return {
    weeks,
    bands,
    species,
    weekOf: Int32Array.from({ length: days }, (_, day) => Math.floor(day / DAYS_PER_WEEK)),
    alive: new Float64Array(weeks * species * bands),
    eaten: new Float64Array(weeks * bands),
  };
}

/** Notes what is alive on the first day of a week, as far as the ruler reaches; what is not to be fed lies beyond it. */
export function noteAlive(
  tally: WeekTally,
  larder: Larder,
  { day, edgesMm }: { day: number; edgesMm: Float64Array },
): void {
  if (day % DAYS_PER_WEEK !== 0) return;
  const week = tally.weekOf[day] as number;
  const { cohorts } = larder.stock;
  const [from, to] = [edgesMm[0] as number, edgesMm[edgesMm.length - 1] as number];
  for (const [c, { species, firstSlice, slices, frozen }] of cohorts.entries()) {
    if (frozen || (larder.arrivesOn[c] as number) > day) continue;
    const row = (week * tally.species + species) * tally.bands;
    for (let q = firstSlice; q < firstSlice + slices; q++) {
      const length = larder.lengthMm[q] as number;
      if (length < from || length >= to) continue;
      const at = row + bandOf(edgesMm, length);
      tally.alive[at] = (tally.alive[at] as number) + (larder.heads[q] as number);
    }
  }
}

/** The band a length lies in; lengths beyond the ruler lie in its first or last. */
export function bandOf(edgesMm: Float64Array, lengthMm: number): number {
  let low = 0;
  let high = edgesMm.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((edgesMm[middle] as number) <= lengthMm) low = middle;
    else high = middle;
  }
  return low;
}
