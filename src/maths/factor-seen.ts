/** A factor whose log is known to within a normal, once it was seen with an error. */

export interface FactorSeen {
  /** The likeliest log, and the variance left about it. */
  readonly log: number;
  readonly variance: number;
}

export interface FactorReading {
  /** Variance of the log beforehand, about 0. */
  readonly variance: number;
  /** What was read, below 0 too, and its standard deviation. */
  readonly times: number;
  readonly error: number;
  /** The log is sought no further off than this. */
  readonly most: number;
}

const HALVINGS = 50;

/**
 * The x that makes x^2 / 2v + (e^x - times)^2 / 2 error^2 least, by halving where its slope turns; 1 / (1/v + e^2x / error^2)
 * is the variance left (Laplace's approximation, its curvature as Gauss and Newton take it).
 */
export function factorSeen({ variance, times, error, most }: FactorReading): FactorSeen {
  const precision = 1 / Math.max(Number.EPSILON, error * error);
  const rises = (log: number) => log / variance + (Math.exp(log) - times) * Math.exp(log) * precision > 0;
  let [low, high] = [-most, most];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (rises(middle)) high = middle;
    else low = middle;
  }
  const log = (low + high) / 2;
  return { log, variance: 1 / (1 / variance + Math.exp(2 * log) * precision) };
}
