/** Mean of numbers, each counted alike; 0 of none. */
export const meanOf = (values: Float64Array): number =>
  values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length;
