/** A distribution as equally likely points: its quantiles in the middle of n equal shares. */
import { sortedQuantile } from './quantile.ts';

/** The middles of n equal shares of 0 to 1: (i + 1/2)/n. */
export const midShares = (n: number): Float64Array =>
  Float64Array.from({ length: n }, (_, i) => (i + 0.5) / n);

/** Values, each as likely, told by n of them: the quantiles of mid shares. */
export function thinned(values: Float64Array, n: number): Float64Array {
  const ascending = Float64Array.from(values).sort();
  return midShares(n).map((share) => sortedQuantile(ascending, share));
}

/** Each of the first with each of the second. */
export function everyPair(
  first: Float64Array,
  second: Float64Array,
  join: (a: number, b: number) => number,
): Float64Array {
  const pairs = new Float64Array(first.length * second.length);
  first.forEach((a, i) => {
    second.forEach((b, j) => {
      pairs[i * second.length + j] = join(a, b);
    });
  });
  return pairs;
}
