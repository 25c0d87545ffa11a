/** The stock that sustains a harvest; a large colony is judged by one of its equal parts. */
import { chancesOf, fewestSustaining, type Sustained, type Sustaining } from './sustains.ts';

export interface SustainingStock {
  /** Null where not even many times the smallest stock sustain. */
  readonly sustaining: Sustained | null;
  /** Numbers of breeders tried, ascending. */
  readonly tried: readonly Sustained[];
}

/**
 * Found in whole animals. Beyond so many breeders the luck of single animals evens out, and following each takes long:
 * the colony is then taken for several of equal size, each of which must sustain its part. That errs on the safe side,
 * since parts kept together would help one another out.
 */
export function sustainingStock(asked: Sustaining): SustainingStock {
  const { stock, wanted, policy } = asked;
  const parts = Math.max(1, Math.ceil((stock.females + stock.males) / policy.colonyWholeMost.value));
  const part: Sustaining = {
    ...asked,
    wanted: wanted.map((size) => ({ ...size, heads: Math.ceil(size.heads / parts) })),
    stock: {
      ...stock,
      adults: stock.adults / parts,
      females: stock.females / parts,
      standing: stock.standing.map((heads) => heads / parts),
    },
  };
  const whole = ({ females, males, chance }: Sustained): Sustained => ({
    females: females * parts,
    males: males * parts,
    chance,
  });
  const chances = chancesOf(part);
  const found = fewestSustaining(part, chances.of);
  return { sustaining: found && whole(found), tried: chances.tried().map(whole) };
}
