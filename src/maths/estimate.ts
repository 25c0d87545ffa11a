/** A mean over replicates with its 95 % interval. */
import { normalQuantile } from './normal.ts';

export interface Estimate {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** What is known without error. */
export const exactly = (mean: number): Estimate => ({ mean, low: mean, high: mean });

const Z = normalQuantile(0.975);

/** mean -+ z s/sqrt(n), z of the normal distribution. */
export function estimate(values: ArrayLike<number>): Estimate {
  const n = values.length;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i] as number;
  const mean = n > 0 ? sum / n : 0;
  let squares = 0;
  for (let i = 0; i < n; i++) squares += ((values[i] as number) - mean) ** 2;
  const half = n > 1 ? Z * Math.sqrt(squares / (n - 1) / n) : 0;
  return { mean, low: mean - half, high: mean + half };
}

/** The sum of two that know nothing of one another: their errors add in squares. */
export function sumOf(a: Estimate, b: Estimate): Estimate {
  const mean = a.mean + b.mean;
  return {
    mean,
    low: mean - Math.hypot(a.mean - a.low, b.mean - b.low),
    high: mean + Math.hypot(a.high - a.mean, b.high - b.mean),
  };
}
