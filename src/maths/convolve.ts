/** Distributions of whole numbers given by their probabilities of 0, 1, 2, ... */

/** Probabilities of the sum of two independent whole numbers. */
export function convolve(a: ArrayLike<number>, b: ArrayLike<number>): Float64Array {
  const sum = new Float64Array(a.length + b.length - 1);
  for (let i = 0; i < a.length; i++) {
    const share = a[i] as number;
    if (share === 0) continue;
    for (let j = 0; j < b.length; j++) sum[i + j] = (sum[i + j] as number) + share * (b[j] as number);
  }
  return sum;
}

/** Mean and variance. */
export function momentsOf(probabilities: ArrayLike<number>): { mean: number; variance: number } {
  let mean = 0;
  for (let k = 0; k < probabilities.length; k++) mean += k * (probabilities[k] as number);
  let variance = 0;
  for (let k = 0; k < probabilities.length; k++) variance += (k - mean) ** 2 * (probabilities[k] as number);
  return { mean, variance };
}
