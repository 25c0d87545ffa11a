/** Beliefs about one number as weights on a grid: priors laid out, and quantiles read off. */
import { gammaQuantile } from './gamma.ts';
import { normalCdf, normalQuantile } from './normal.ts';
import { midShares } from './points.ts';

/** A prior laid out: its points, ascending, and the ln of their weights. */
export interface Grid {
  readonly x: Float64Array;
  readonly lnWeight: Float64Array;
}

/** Standard deviations a normal grid reaches to either side, its coarse steps, and fine steps in each of these. */
const REACH = 3;
const COARSE_STEPS = 8;
const FINE_STEPS = 8;

const evenly = (from: number, to: number, steps: number): Float64Array =>
  Float64Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);

/**
 * A normal prior of mean 0 twice: at a few points, where what is costly is worked out, and at many. With an sd of 0 both
 * are the one point 0.
 */
export function normalGrids(sd: number): { coarse: Grid; fine: Grid } {
  const gridOf = (steps: number): Grid => {
    const x = sd > 0 ? evenly(-REACH * sd, REACH * sd, steps) : new Float64Array(1);
    return { x, lnWeight: x.map((at) => (sd > 0 ? -((at / sd) ** 2) / 2 : 0)) };
  };
  return { coarse: gridOf(COARSE_STEPS), fine: gridOf(COARSE_STEPS * FINE_STEPS) };
}

/** Values at the coarse points drawn to the fine ones: cubic pieces with the slope between a point's neighbours (Catmull & Rom 1974). */
export function refined(coarse: Float64Array): Float64Array {
  const last = coarse.length - 1;
  const value = (i: number): number => coarse[Math.min(last, Math.max(0, i))] as number;
  const slope = (i: number): number => (value(i + 1) - value(i - 1)) / (i > 0 && i < last ? 2 : 1);
  return Float64Array.from({ length: last * FINE_STEPS + 1 }, (_, k) => {
    const i = Math.floor(k / FINE_STEPS);
    const t = k / FINE_STEPS - i;
    const bend = slope(i) * (1 - t) - slope(i + 1) * t;
    const rest = (value(i + 1) - value(i)) * (1 - 2 * t);
    return value(i) * (1 - t) + value(i + 1) * t + t * (1 - t) * (bend - rest);
  });
}

/** The same of shares that rise from none to all as a normal distribution does: drawn between its quantiles. */
export const refinedShares = (coarse: Float64Array): Float64Array =>
  refined(
    coarse.map((share) => normalQuantile(Math.min(1 - Number.EPSILON, Math.max(Number.EPSILON, share)))),
  ).map(normalCdf);

/** Values at the fine points that are coarse ones too. */
export const coarsened = (fine: Float64Array): Float64Array => fine.filter((_, i) => i % FINE_STEPS === 0);

const GAMMA_STEPS = 95;
const GAMMA_FROM = 1e-3;
const GAMMA_BEYOND = 1e-6;

/** A gamma prior of mean 1 and this CV at points of equal ratio; the one point 1 for a CV of 0. */
export function gammaGrid(cv: number): Grid {
  if (cv <= 0) return { x: Float64Array.of(1), lnWeight: new Float64Array(1) };
  const shape = 1 / (cv * cv);
  const bound = (p: number) => Math.log(gammaQuantile(p, shape) / shape);
  const x = evenly(bound(GAMMA_FROM), bound(1 - GAMMA_BEYOND), GAMMA_STEPS).map(Math.exp);
  // Density x^(a-1) e^(-ax), times x for steps of equal ratio.
  return { x, lnWeight: x.map((at) => shape * (Math.log(at) - at)) };
}

/** Equally likely ranks by which a belief is laid out for draws. */
export const RANK_SHARES = midShares(128);

/** ln of a share of the greatest weight that counts as none. */
const HARDLY = -20;

/** Weights that sum to 1 from their logarithms; what is hardly anything beside the greatest is none. */
export function normalised(lnWeights: Float64Array): Float64Array {
  const most = lnWeights.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const weights = lnWeights.map((ln) => (ln - most < HARDLY ? 0 : Math.exp(ln - most)));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}

/**
 * Quantiles at ascending shares of a belief on a grid. The weight of a point lies evenly between the middles to its
 * neighbours, on the scale of `x`; one point alone is every quantile.
 */
export function gridQuantiles(
  x: Float64Array,
  weights: Float64Array,
  shares: ArrayLike<number>,
): Float64Array {
  const last = x.length - 1;
  const edge = (i: number): number => {
    if (i <= 0) return x[0] as number;
    return i > last ? (x[last] as number) : ((x[i - 1] as number) + (x[i] as number)) / 2;
  };
  let i = 0;
  let below = 0;
  return Float64Array.from(shares, (share) => {
    while (i < last && below + (weights[i] as number) < share) below += weights[i++] as number;
    const weight = weights[i] as number;
    const part = weight > 0 ? Math.min(1, Math.max(0, (share - below) / weight)) : 0;
    return edge(i) + (edge(i + 1) - edge(i)) * part;
  });
}

/**
 * Quantiles at ascending shares of weighted values in any order: drawn straight between the values, each at the middle of
 * its own weight; none lies beyond the least and the greatest.
 */
export function weightedQuantiles(
  values: Float64Array,
  weights: Float64Array,
  shares: readonly number[],
): number[] {
  const order = Uint32Array.from(values.keys()).sort((a, b) => (values[a] as number) - (values[b] as number));
  let [i, below, last] = [0, 0, { middle: 0, value: values[order[0] as number] as number }];
  return shares.map((share) => {
    for (; i < order.length; i++) {
      const at = order[i] as number;
      const [value, weight] = [values[at] as number, weights[at] as number];
      const middle = below + weight / 2;
      if (middle >= share) {
        const part = middle > last.middle ? (share - last.middle) / (middle - last.middle) : 1;
        return last.value + (value - last.value) * part;
      }
      last = { middle, value };
      below += weight;
    }
    return last.value;
  });
}

/** The value at a place among the points, whole or between two of them. */
export function between(values: ArrayLike<number>, place: number): number {
  const at = Math.min(Math.floor(place), Math.max(0, values.length - 2));
  const low = values[at] as number;
  return place === at ? low : low + ((values[at + 1] as number) - low) * (place - at);
}

/** ln of the sum of exp over each row, a row being as long as `lnWeights`, which are added to it. */
export function lnSums(rows: Float64Array, lnWeights: Float64Array): Float64Array {
  const n = lnWeights.length;
  return Float64Array.from({ length: rows.length / n }, (_, i) => {
    const ln = lnWeights.map((weight, j) => weight + (rows[i * n + j] as number));
    const most = ln.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
    return most + Math.log(ln.reduce((sum, each) => sum + Math.exp(each - most), 0));
  });
}

/** Mean and standard deviation of a belief on a grid. */
export function momentsOn(x: Float64Array, weights: Float64Array): { mean: number; sd: number } {
  const mean = x.reduce((sum, at, i) => sum + at * (weights[i] as number), 0);
  const variance = x.reduce((sum, at, i) => sum + (at - mean) ** 2 * (weights[i] as number), 0);
  return { mean, sd: Math.sqrt(variance) };
}
