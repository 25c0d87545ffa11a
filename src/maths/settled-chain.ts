/** What a stage chain settles into when it is left alone for long. */
import { type ChainRates, dayOfChain } from './uniformise.ts';

const STILL = 1e-7;
const MOST_DAYS = 4000;

/**
 * Shares by compartment, summing to 1, after so many days that they move by less than 1e-7 a day: the stable
 * distribution of a breeding chain. From newborn onwards; a chain that dies out has none and gives null.
 */
export function settledChain(rates: ChainRates): Float64Array | null {
  let shares: Float64Array = new Float64Array(rates.exit.length);
  shares[rates.birthInto] = 1;
  for (let day = 0; day < MOST_DAYS; day++) {
    const { heads } = dayOfChain(shares, rates);
    const sum = heads.reduce((a, b) => a + b, 0);
    if (!(sum > 0)) return null;
    const next = heads.map((n) => n / sum);
    const moved = next.reduce((most, n, j) => Math.max(most, Math.abs(n - (shares[j] as number))), 0);
    shares = next;
    if (moved < STILL) return shares;
  }
  return shares;
}
