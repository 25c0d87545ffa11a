/** Positive quantities known to within a factor, by mean and variance. */
import { weightedQuantiles } from './belief-grid.ts';
import { normalQuantile } from './normal.ts';
import { midShares } from './points.ts';
import { BAND } from './quantile.ts';

export interface Moments {
  readonly mean: number;
  readonly variance: number;
}

/** sd of the logarithm of a log-normal quantity with this CV. */
export const logSdOf = (cv: number): number => Math.sqrt(Math.log1p(cv * cv));

/** Mean and variance of the logarithm of a log-normal quantity: s2 = ln(1 + V/m^2), mu = ln m - s2/2. */
export function logMoments({ mean, variance }: Moments): Moments {
  const logVariance = Math.log1p(variance / (mean * mean));
  return { mean: Math.log(mean) - logVariance / 2, variance: logVariance };
}

/** The 5, 50 and 95 % quantiles of a quantity whose logarithm is normal with these moments. */
export function bandOfLog({ mean, variance }: Moments): { low: number; mid: number; high: number } {
  const at = (share: number) => Math.exp(mean + Math.sqrt(variance) * normalQuantile(share));
  return { low: at(BAND.low), mid: at(BAND.mid), high: at(BAND.high) };
}

export interface Measured {
  /** The quantity afterwards. */
  readonly now: Moments;
  /** ln of the density of the logarithm of what was read, before it was. */
  readonly lnDensity: number;
}

/**
 * A log-normal quantity after it was read as `reading`, whose logarithm errs by a normal of sd `errorLogSd`: in logarithms
 * the conjugate update of a normal mean (Gelman et al., Bayesian Data Analysis, 3rd ed., eq. 2.10).
 */
export function measured(before: Moments, reading: number, errorLogSd: number): Measured {
  const { mean: mu, variance } = logMoments(before);
  const error = errorLogSd * errorLogSd;
  const both = variance + error;
  const off = Math.log(reading) - mu;
  if (both <= 0) return { now: { mean: reading, variance: 0 }, lnDensity: 0 };
  const logVariance = (variance * error) / both;
  const mean = Math.exp(mu + (off * variance) / both + logVariance / 2);
  return {
    now: { mean, variance: mean * mean * Math.expm1(logVariance) },
    lnDensity: -(off * off) / (2 * both) - Math.log(2 * Math.PI * both) / 2,
  };
}

const POINTS = midShares(28).map(normalQuantile);
/** Parts of less weight than this move no quantile that is shown. */
const NO_WEIGHT = 1e-4;

/** Quantiles of a mixture of log-normals, each told by 28 equally likely points; a part of mean 0 is 0. */
export function mixtureQuantiles(
  parts: readonly (Moments & { readonly weight: number })[],
  shares: readonly number[],
): number[] {
  const weighty = parts.filter(({ weight }) => weight > NO_WEIGHT);
  const values = new Float64Array(weighty.length * POINTS.length);
  const weights = new Float64Array(values.length);
  weighty.forEach((part, i) => {
    const { mean, variance } =
      part.mean > 0 ? logMoments(part) : { mean: Number.NEGATIVE_INFINITY, variance: 0 };
    POINTS.forEach((z, q) => {
      values[i * POINTS.length + q] = Math.exp(mean + Math.sqrt(variance) * z);
      weights[i * POINTS.length + q] = part.weight / POINTS.length;
    });
  });
  return weightedQuantiles(values, weights, shares);
}
