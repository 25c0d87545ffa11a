/** Several days of a stage chain as one step: where those of each compartment are then. */
import { type ChainRates, dayOfChain } from './uniformise.ts';

/** Non-negative A[to][from]: what one in `from` adds to `to` in one step. */
export type Step = readonly Float64Array[];

/** What one in `from` has become after so many days, by compartment: a column of exp(A days). */
export function columnAfter(rates: ChainRates, from: number, days: number): Float64Array {
  let heads: Float64Array = new Float64Array(rates.exit.length);
  heads[from] = 1;
  for (let day = 0; day < days; day++) heads = dayOfChain(heads, rates).heads;
  return heads;
}

/** Where heads by compartment are after a step. */
export const afterStep = (heads: Float64Array, step: Step): Float64Array =>
  Float64Array.from(step, (row) =>
    row.reduce((sum, share, from) => sum + share * (heads[from] as number), 0),
  );

/** exp(A days); births in it are grown to the end of the step. */
export function stepOf(rates: ChainRates, days: number): Step {
  const columns = Array.from(rates.exit, (_, from) => columnAfter(rates, from, days));
  return columns.map((_, to) => Float64Array.from(columns, (column) => column[to] as number));
}

/** The same chain without births. */
export const barren = (rates: ChainRates): ChainRates => ({
  ...rates,
  birth: new Float64Array(rates.birth.length),
});
