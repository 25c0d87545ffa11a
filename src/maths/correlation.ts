/** How closely two lists go together. */

/** Pearson's correlation of two lists of one length, -1 to 1; 0 when either does not vary. */
export function correlation(x: Float64Array, y: Float64Array): number {
  const n = x.length;
  const mean = (values: Float64Array) => values.reduce((a, b) => a + b, 0) / n;
  const [mx, my] = [mean(x), mean(y)];
  let [sxy, sxx, syy] = [0, 0, 0];
  for (let i = 0; i < n; i++) {
    const [dx, dy] = [(x[i] as number) - mx, (y[i] as number) - my];
    sxy += dx * dy;
    sxx += dx * dx;
    syy += dy * dy;
  }
  return sxx > 0 && syy > 0 ? sxy / Math.sqrt(sxx * syy) : 0;
}
