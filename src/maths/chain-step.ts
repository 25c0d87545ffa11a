/** Several days of a stage chain as one step: where those of each compartment are then. */
import { type ChainRates, dayOfChain } from './uniformise.ts';

/** Non-negative A[to][from]: what one in `from` adds to `to` in one step. */
export type Step = readonly Float64Array[];

/** exp(A days), column by column; births in it are grown to the end of the step. */
export function stepOf(rates: ChainRates, days: number): Step {
  const n = rates.exit.length;
  const step = Array.from({ length: n }, () => new Float64Array(n));
  for (let from = 0; from < n; from++) {
    let heads: Float64Array = new Float64Array(n);
    heads[from] = 1;
    for (let day = 0; day < days; day++) heads = dayOfChain(heads, rates).heads;
    heads.forEach((share, to) => {
      (step[to] as Float64Array)[from] = share;
    });
  }
  return step;
}
