/** Long-run growth of a population in classes: its factor per step, stable distribution and reproductive values. */

/** Non-negative A[to][from]: what one member of class `from` adds to class `to` in one step. */
export type Projection = readonly (readonly number[] | Float64Array)[];

export interface Growth {
  /** Factor per step [lambda]. */
  readonly factor: number;
  /** Share of each class in the long run; shares sum to 1. */
  readonly stable: Float64Array;
  /** Worth of one member of each class to the future population, the first class that has any worth = 1. */
  readonly reproductive: Float64Array;
}

const CLOSE = 1e-13;
const MOST_STEPS = 200_000;

/**
 * A w = lambda w, v A = lambda v, lambda the eigenvalue of greatest modulus (Caswell 2001, Matrix Population Models,
 * section 4.4). By power iteration on A + I, which has the same vectors and, unlike A, one eigenvalue of greatest
 * modulus even where all births fall in one class. Null without classes, or where the iteration does not settle:
 * a population that dies out within a few steps has no long run.
 */
export function growthOf(projection: Projection): Growth | null {
  const n = projection.length;
  const ahead = settled(n, (from, to) => addProduct(projection, from, to));
  const back = settled(n, (from, to) => addTransposed(projection, from, to));
  if (ahead === null || back === null) return null;
  const unit = back.vector.find((worth) => worth > CLOSE) ?? 1;
  return {
    factor: ahead.factor,
    stable: ahead.vector,
    reproductive: back.vector.map((worth) => worth / unit),
  };
}

interface Settled {
  readonly factor: number;
  /** Sums to 1. */
  readonly vector: Float64Array;
}

/** Repeats x -> (x + A x) / sum until x stands still. */
function settled(n: number, add: (from: Float64Array, to: Float64Array) => void): Settled | null {
  let vector = new Float64Array(n).fill(1 / n);
  for (let step = 0; step < MOST_STEPS && n > 0; step++) {
    const next = vector.slice();
    add(vector, next);
    const sum = next.reduce((a, b) => a + b, 0);
    let moved = 0;
    for (let j = 0; j < n; j++) {
      next[j] = (next[j] as number) / sum;
      moved = Math.max(moved, Math.abs((next[j] as number) - (vector[j] as number)));
    }
    vector = next;
    if (moved < CLOSE / n) return { factor: sum - 1, vector };
  }
  return null;
}

function addProduct(projection: Projection, from: Float64Array, to: Float64Array): void {
  projection.forEach((row, i) => {
    let sum = 0;
    for (let j = 0; j < from.length; j++) sum += (row[j] as number) * (from[j] as number);
    to[i] = (to[i] as number) + sum;
  });
}

function addTransposed(projection: Projection, from: Float64Array, to: Float64Array): void {
  projection.forEach((row, i) => {
    const x = from[i] as number;
    for (let j = 0; j < to.length; j++) to[j] = (to[j] as number) + (row[j] as number) * x;
  });
}
