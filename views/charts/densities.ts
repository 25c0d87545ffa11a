/** Heads per length band as densities along the log scale, softened as lengths are known. */

/** One pass of a soft brush: a half stays, a quarter goes to each neighbour; no head is lost. */
const brushed = (heads: readonly number[]): number[] =>
  heads.map((n, i) => {
    const left = heads[i - 1] ?? n;
    const right = heads[i + 1] ?? n;
    return (left + 2 * n + right) / 4;
  });
const PASSES = 2;

/**
 * Heads per unit of log length, so that a band's area is its heads whatever its width; softened by less than two
 * bands, because lengths are known no better.
 */
export function densities(edges: readonly number[], heads: readonly number[]): number[] {
  let soft = [...heads];
  for (let pass = 0; pass < PASSES; pass += 1) soft = brushed(soft);
  return soft.map((n, i) => n / Math.log(edges[i + 1]! / edges[i]!));
}

/** Columns added band by band. */
export const sum = (columns: readonly (readonly number[])[], bands: number): number[] =>
  Array.from({ length: bands }, (_, i) => columns.reduce((total, column) => total + (column[i] ?? 0), 0));
