/** Long-run growth of a stage chain: its rate, stable distribution, reproductive values and generation time. */
import type { ChainRates } from './uniformise.ts';

export interface Growth {
  /** Growth per unit of time, as a rate: numbers go with exp(r t) [r]. */
  readonly rate: number;
  /** Share of each compartment in the long run; shares sum to 1 [w]. */
  readonly stable: Float64Array;
  /** Worth of one in each compartment to the future population, that of a newborn = 1 [v]. */
  readonly reproductive: Float64Array;
  /** Mean age of the mothers of a day's newborn in the stable population [T]. */
  readonly generation: number;
}

/** How far from 1 the births of a life may sum at the root; further, there is no root. */
const CLOSE = 1e-6;
const HALVINGS = 200;

/**
 * The greatest r with A w = r w and v A = r v, from the equation of Euler and Lotka: the sum over j of b_j u_j(r) is
 * 1, u_j = the product over i < j of a_i / (e_i + r), divided by e_j + r: with advance a, exit e and births b the
 * discounted time a newborn spends in compartment j. Then w_j goes with u_j, and v_j = (b_j + a_j v_{j+1}) / (e_j + r).
 * T = v w / b w, the mean age of mothers, not a step more or less (Caswell 2001, Matrix Population Models, chapter 5;
 * Bienvenu & Legendre 2015, Am. Nat. 185:834-843: T = lambda v w / v F w where steps are whole).
 *
 * A projection matrix with births in its first row, staying on its diagonal and advance below it has the same
 * equation with e_j = -A[j][j]; r is then its factor lambda and T counts steps when multiplied by lambda.
 * Null where nobody ever breeds, or where those past breeding outlast every growth.
 */
export function growthOf(rates: ChainRates): Growth | null {
  const rate = rootOf(rates);
  const weights = discounted(rates, rate);
  const births = birthsOf(rates, weights);
  if (!(Math.abs(births - 1) < CLOSE)) return null;
  const worth = worths(rates, rate);
  const reproductive = worth.map((v) => v / (worth[rates.birthInto] as number));
  const total = weights.reduce((sum, u) => sum + u, 0);
  return {
    rate,
    stable: weights.map((u) => u / total),
    reproductive,
    generation: weights.reduce((sum, u, j) => sum + u * (reproductive[j] as number), 0) / births,
  };
}

/** Largest share of every class that can be taken in each step for ever: 1 - 1/lambda; 0 where nothing grows. */
export const shareToSpare = (factor: number): number => Math.max(0, 1 - 1 / factor);

/** By halving between the slowest exit, where the births of a life have no bound, and the most one head can add. */
function rootOf(rates: ChainRates): number {
  const { exit, advance, birth } = rates;
  const adds = exit.map((e, j) => (advance[j] as number) + (birth[j] as number) - e);
  let low = -Math.min(...exit);
  let high = Math.max(low, ...adds);
  for (let step = 0; step < HALVINGS; step++) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;
    if (birthsOf(rates, discounted(rates, middle)) > 1) low = middle;
    else high = middle;
  }
  return high;
}

/** u_j(r) of every compartment; those before the newborn's hold nobody. */
function discounted({ exit, advance, birthInto }: ChainRates, rate: number): Float64Array {
  const weights = new Float64Array(exit.length);
  let reached = 1;
  for (let j = birthInto; j < exit.length; j++) {
    const leaving = (exit[j] as number) + rate;
    weights[j] = reached / leaving;
    reached *= (advance[j] as number) / leaving;
  }
  return weights;
}

/** Births over a life, discounted; compartments without births are left out, however long they are stayed in. */
function birthsOf({ birth }: ChainRates, weights: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < birth.length; j++) {
    const perHead = birth[j] as number;
    if (perHead > 0) sum += perHead * (weights[j] as number);
  }
  return sum;
}

function worths({ exit, advance, birth }: ChainRates, rate: number): Float64Array {
  const worth = new Float64Array(exit.length);
  let next = 0;
  for (let j = exit.length - 1; j >= 0; j--) {
    next = ((birth[j] as number) + (advance[j] as number) * next) / ((exit[j] as number) + rate);
    worth[j] = next;
  }
  return worth;
}
