/** Draws of whole things: where one head goes among a few places, how many come at a mean rate. */
import { normalQuantile } from './normal.ts';

/** Places reached from each class with their chances added up; what is missing to 1 are deaths. */
export interface Moves {
  /** Places of class j lie from start[j] to start[j + 1]. */
  readonly start: Int32Array;
  readonly to: Int32Array;
  readonly upTo: Float64Array;
}

/** Chances smaller than this are left out. */
const NONE = 1e-9;

/** Moves where each class has so large a share of itself in each place after the step. */
export function movesOf(classes: readonly Float64Array[]): Moves {
  const start = new Int32Array(classes.length + 1);
  const to: number[] = [];
  const upTo: number[] = [];
  classes.forEach((shares, from) => {
    let sum = 0;
    for (const place of likeliestFirst(shares)) {
      sum += shares[place] as number;
      to.push(place);
      upTo.push(sum);
    }
    start[from + 1] = to.length;
  });
  return { start, to: Int32Array.from(to), upTo: Float64Array.from(upTo) };
}

/** Places worth a look, so ordered that a search from the first on is short. */
const likeliestFirst = (shares: Float64Array): number[] =>
  [...shares.keys()]
    .filter((place) => (shares[place] as number) >= NONE)
    .sort((a, b) => (shares[b] as number) - (shares[a] as number));

/** Place of one head of class `from` for a uniform draw; -1 where it has died. */
export function moved({ start, to, upTo }: Moves, from: number, u: number): number {
  const end = start[from + 1] as number;
  for (let k = start[from] as number; k < end; k++) if (u < (upTo[k] as number)) return to[k] as number;
  return -1;
}

/** Smallest k with P(X <= k) >= u, X Poisson of this mean. */
export function poissonQuantile(u: number, mean: number): number {
  if (mean > MOST_SUMMED) return roundedNormal(u, mean, 1 / Math.sqrt(mean));
  let term = Math.exp(-mean);
  let below = term;
  let k = 0;
  while (below < u && term > 0) {
    k++;
    term *= mean / k;
    below += term;
  }
  return k;
}

/** Beyond, exp(-mean) is too small a number and the normal is near enough. */
const MOST_SUMMED = 500;

/** A normal quantile of this mean and CV, rounded, not below 0. */
export const roundedNormal = (u: number, mean: number, cv: number): number =>
  Math.max(0, Math.round(mean * (1 + cv * normalQuantile(u))));
