/** Sample quantiles, one definition throughout: the inverse of the empirical distribution (Hyndman & Fan 1996, type 1). */

/** Smallest value of an ascending list with at least a share p of the list at or below it; NaN for an empty list. */
export function sortedQuantile(ascending: ArrayLike<number>, p: number): number {
  const n = ascending.length;
  if (n === 0) return Number.NaN;
  const index = Math.min(n - 1, Math.max(0, Math.ceil(p * n - 1e-9) - 1));
  return ascending[index] as number;
}

/** The same of a distribution given by its probabilities of 0, 1, 2, ... */
export function countQuantile(probabilities: ArrayLike<number>, p: number): number {
  let sum = 0;
  for (let k = 0; k < probabilities.length; k++) {
    sum += probabilities[k] as number;
    if (sum >= p - 1e-12) return k;
  }
  return probabilities.length - 1;
}

/** Shares that bound every band shown: 5, 50 and 95 %. */
export const BAND = { low: 0.05, mid: 0.5, high: 0.95 } as const;
