/** Whether a colony of so many breeders gives what is wanted, simulated in whole animals. */
import { joinKeys, keyOfCode, purposes, uniform } from '../../maths/random.ts';
import { recall } from '../../maths/recall.ts';
import type { Policy } from '../policy.ts';
import { DAYS_PER_WEEK, DAYS_PER_YEAR } from '../units.ts';
import type { Breeding, Wanted } from './breeding.ts';
import type { BreedingStock } from './breeding-stock.ts';
import { type Herd, type HerdLaws, herdLaws, VACANT, weekOfHerd } from './herd.ts';
import { harvest } from './herd-harvest.ts';
import { sizesOf } from './sizes.ts';

export interface Sustaining {
  readonly breeding: Breeding;
  /** The largest first, whole heads. */
  readonly wanted: readonly Wanted[];
  /** The smallest stock by means. */
  readonly stock: BreedingStock;
  readonly policy: Policy;
  readonly seed: number;
}

/** So many females, the males they need, and the chance that their harvest is met in enough of the weeks. */
export interface Sustained {
  readonly females: number;
  readonly males: number;
  readonly chance: number;
}

export interface Chances {
  readonly of: (females: number) => Sustained;
  /** Those asked for so far, ascending. */
  readonly tried: () => Sustained[];
}

/** Chances by number of females, on the same draws. */
export function chancesOf(asked: Sustaining): Chances {
  const laws = herdLaws(asked.breeding);
  const known = new Map<number, Sustained>();
  const chance = (females: number): Sustained => {
    const males = Math.ceil(females / asked.breeding.femalesPerMale);
    return { females, males, chance: chanceOf(laws, asked, { females, males }) };
  };
  return {
    of: (females) => recall(known, females, () => chance(females)),
    tried: () => [...known.values()].sort((a, b) => a.females - b.females),
  };
}

/** Whole weeks of so many years. */
export const weeksOf = (years: number): number => Math.round((years * DAYS_PER_YEAR) / DAYS_PER_WEEK);

interface Places {
  readonly females: number;
  readonly males: number;
}

function chanceOf(laws: HerdLaws, asked: Sustaining, places: Places): number {
  const { stock, wanted, policy, seed } = asked;
  const times = places.females / stock.females;
  const sizes = sizesOf(asked.breeding, { wanted, stock, times });
  const weeks = weeksOf(policy.colonyYears.value);
  const replicates = policy.colonyReplicates.value;
  let sustained = 0;
  for (let replicate = 0; replicate < replicates; replicate++) {
    const key = joinKeys(joinKeys(keyOfCode('colony'), seed), replicate);
    const herd = herdAtStart(laws, { ...places, stock, times, key });
    let met = 0;
    for (let week = 1; week <= weeks; week++) {
      weekOfHerd(laws, herd, joinKeys(key, week));
      met += Number(harvest(laws, herd, sizes));
    }
    if (met >= policy.colonyWeeksMet.value * weeks) sustained++;
  }
  return sustained / replicates;
}

const OF = purposes('rounding', 'substage', 'phase');

/** A colony in its stride: the stationary stock so many times over, its means rounded up or down by chance. */
function herdAtStart(
  laws: HerdLaws,
  { stock, females, males, times, key }: Places & { stock: BreedingStock; times: number; key: number },
): Herd {
  const { chain, firstAdult, femaleShare } = laws;
  const rounding = joinKeys(key, OF.rounding);
  const heads = new Int32Array(2 * chain.size);
  for (let j = 0; j < firstAdult; j++) {
    const mean = (stock.standing[j] as number) * times;
    heads[j] = Math.floor(mean * femaleShare + uniform(rounding, j));
    heads[chain.size + j] = Math.floor(mean * (1 - femaleShare) + uniform(rounding, chain.size + j));
  }
  const breeders = new Int32Array(females + males).fill(VACANT);
  breeders.forEach((_, slot) => {
    breeders[slot] = adultAt(laws, stock, uniform(joinKeys(key, OF.substage), slot));
  });
  return {
    heads,
    breeders,
    females,
    ageWeeks: Float64Array.from(breeders, (substage) => laws.adultAgeWeeks[substage] as number),
    brooding: Float64Array.from({ length: females }, (_, slot) => uniform(joinKeys(key, OF.phase), slot)),
  };
}

/** Substage below which a share u of the standing adults lies. */
function adultAt({ firstAdult, chain }: HerdLaws, { standing, adults }: BreedingStock, u: number): number {
  let below = 0;
  for (let j = firstAdult; j < chain.size; j++) {
    below += (standing[j] as number) / adults;
    if (u < below) return j;
  }
  return chain.size - 1;
}

/**
 * Fewest females that sustain: from the smallest stock by means in steps that double until they do, then halved
 * between. More females keep every draw of the fewer, so that the chance rises with them but for what is left to grow
 * on. Null where not even many times the smallest stock do.
 */
export function fewestSustaining(asked: Sustaining, chances: Chances['of']): Sustained | null {
  const { colonyChance, colonyMostTimes } = asked.policy;
  const does = (females: number) => chances(females).chance >= colonyChance.value;
  const fewest = Math.ceil(asked.stock.females);
  let low = fewest - 1;
  let high = fewest;
  for (let by = 1; !does(high); by *= 2) {
    low = high;
    high += by;
    if (high > fewest * colonyMostTimes.value) return null;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (does(middle)) high = middle;
    else low = middle;
  }
  return chances(high);
}
