/** Parts brought to a sum, each by as much as it is doubted. */

export interface Stretched {
  readonly parts: Float64Array;
  /** By how much the log of a part of weight 1 was moved, and how fast the sum grows with it there. */
  readonly logTimes: number;
  readonly slope: number;
}

const CLOSE = 1e-9;
const STEPS = 60;

/**
 * The parts x_j e^(w_j z) whose sum is the total; those of weight 0 stay, and do not count. Newton's method on the log of
 * the sum, which is convex and grows with z no slower than the least weight: from the second step on it comes from above.
 * Null where there is nothing to be stretched.
 */
export function stretchedTo(parts: Float64Array, weights: Float64Array, total: number): Stretched | null {
  let [logTimes, slope] = [0, 0];
  for (let step = 0; step < STEPS; step++) {
    let sum = 0;
    slope = 0;
    for (let j = 0; j < parts.length; j++) {
      const weight = weights[j] as number;
      if (weight <= 0) continue;
      const part = (parts[j] as number) * Math.exp(weight * logTimes);
      sum += part;
      slope += weight * part;
    }
    if (slope <= 0) return null;
    if (Math.abs(sum - total) <= CLOSE * total) break;
    logTimes += (Math.log(total / sum) * sum) / slope;
  }
  return {
    parts: parts.map((part, j) => part * Math.exp((weights[j] as number) * logTimes)),
    logTimes,
    slope,
  };
}
