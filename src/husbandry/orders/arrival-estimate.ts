/** How many heads came in a box that nobody counted whole, and how sure that is. */
import { totalByRatio } from '../../maths/ratio-estimate.ts';
import type { Mg } from '../units.ts';

export interface HeadsEstimate {
  readonly heads: number;
  /** Standard error, heads. */
  readonly standardError: number;
}

/** So many heads of the box weigh so much, and all of it so much. */
export interface WeighedSample {
  readonly heads: number;
  readonly massMg: Mg;
  readonly allMg: Mg;
}

interface Spreads {
  /** Spread of single weights, standard deviation over mean. */
  readonly headCv: number;
  /** Spread of one weighing by the scales. */
  readonly scaleCv: number;
}

/** heads = n M / m; CV^2 = headCv^2 (1 - n/N) / n + 2 scaleCv^2: the sample's mean weight, and two weighings. */
export function headsBySample(
  { heads, massMg, allMg }: WeighedSample,
  { headCv, scaleCv }: Spreads,
): HeadsEstimate {
  const { total, cv } = totalByRatio(allMg, { heads, mass: massMg, cv: headCv });
  return { heads: total, standardError: total * Math.hypot(cv, Math.SQRT2 * scaleCv) };
}

/** heads = M / w: the whole box over the species' live mass of one head; its spread is of such a guess. */
export const headsByMass = (allMg: Mg, headMg: Mg, cv: number): HeadsEstimate => ({
  heads: allMg / headMg,
  standardError: (allMg / headMg) * cv,
});

/**
 * heads = x / f, where x heads were counted in the share f of the box. Were each head in that part by its own chance
 * f, Var(x) = N f (1 - f), so that SE = sqrt(N (1 - f) / f); a part that was counted whole has none.
 */
export function headsByPart(counted: number, share: number): HeadsEstimate {
  const heads = counted / share;
  return { heads, standardError: Math.sqrt((heads * (1 - share)) / share) };
}
