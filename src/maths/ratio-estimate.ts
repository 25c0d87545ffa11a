/** A total by ratio: how many there are, from the weight of all and a part that was counted and weighed. */

export interface WeighedPart {
  readonly heads: number;
  readonly mass: number;
  /** Spread of single weights, standard deviation over mean. */
  readonly cv: number;
}

/**
 * r = heads/mass of the part, total = r x mass of all (Scheaffer, Mendenhall & Ott, Elementary Survey Sampling, 6.3).
 * The CV of a mean weight of n out of N drawn without replacement is cv sqrt((1 - n/N)/n).
 */
export function totalByRatio(
  massOfAll: number,
  { heads, mass, cv }: WeighedPart,
): { total: number; cv: number } {
  const total = (heads / mass) * massOfAll;
  return { total, cv: cv * Math.sqrt(Math.max(0, 1 - heads / total) / heads) };
}
