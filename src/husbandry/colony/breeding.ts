/** A species as a colony at one temperature: its week, who breeds, what of it has a wanted size. */
import { type Step, stepOf } from '../../maths/chain-step.ts';
import type { ChainRates } from '../../maths/uniformise.ts';
import { between, type Chain, chainOf, colonyRates, firstAdult } from '../larder/index.ts';
import type { DayTemp, PreySpecies } from '../prey/index.ts';
import { DAYS_PER_WEEK, type Mm } from '../units.ts';

/** A wanted weekly harvest of one size. */
export interface Wanted {
  readonly heads: number;
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

export interface Breeding {
  readonly chain: Chain;
  readonly rates: ChainRates;
  /** From one day to the next, births in it. */
  readonly day: Step;
  /** First substage of the adults. */
  readonly firstAdult: number;
  /** Share of adults that are female, and females one male serves. */
  readonly femaleShare: number;
  readonly femalesPerMale: number;
  /** Weeks of adult life after which breeders are replaced; Infinity where nobody says. */
  readonly retireWeeks: number;
}

/** Null for a species of whose laying nothing is known. */
export function breedingOf(species: PreySpecies, temp: DayTemp): Breeding | null {
  const { laying } = species;
  if (laying === null) return null;
  const chain = chainOf(species);
  const rates = colonyRates(chain, temp);
  const femaleShare = laying.femaleShare.value;
  return {
    chain,
    rates,
    day: stepOf(rates, 1),
    firstAdult: firstAdult(chain),
    femaleShare,
    femalesPerMale: laying.femalesPerMale?.value ?? femaleShare / (1 - femaleShare),
    retireWeeks: (laying.retireAfterDays?.value ?? Number.POSITIVE_INFINITY) / DAYS_PER_WEEK,
  };
}

/** Share of each substage that has a wanted size; nobody that is not a head yet. */
export const sizedShare = (chain: Chain, range: Pick<Wanted, 'fromMm' | 'toMm'>): Float64Array =>
  between(chain, new Float64Array(chain.size).fill(1), range);

/** Mean weeks since becoming adult in each substage; 0 for those that are not. */
export function adultAgeWeeks({ chain, rates, firstAdult }: Breeding): Float64Array {
  const ages = new Float64Array(chain.size);
  let before = 0;
  for (let j = firstAdult; j < chain.size; j++) {
    const stay = 1 / (rates.exit[j] as number) / DAYS_PER_WEEK;
    ages[j] = before + stay / 2;
    before += stay;
  }
  return ages;
}
