/** Rears prey in the engine at one temperature, as a laboratory would: when it matures, how much survives, how long it is. */
import { chainOf } from '../../src/husbandry/larder/chain.ts';
import { firstYoung, massMg, totalHeads } from '../../src/husbandry/larder/lot.ts';
import { ratesOfDay } from '../../src/husbandry/larder/rates.ts';
import type { DayTemp } from '../../src/husbandry/prey/rate.ts';
import { meanOfDay } from '../../src/husbandry/prey/rate.ts';
import type { PreySpecies } from '../../src/husbandry/prey/species.ts';
import { type ChainRates, dayOfChain } from '../../src/maths/uniformise.ts';

export interface Rearing {
  /** Share of those started that have become adult, and that are alive and not adult, by day. */
  readonly adult: readonly number[];
  readonly young: readonly number[];
  /** Median live mass of the young alive, mg, by day; not a number when none is. */
  readonly medianMassMg: readonly number[];
}

interface Start {
  readonly temp: DayTemp;
  readonly from: 'egg' | 'hatch';
  readonly days: number;
}

export const constant = (tempC: number): DayTemp => ({ minC: tempC, maxC: tempC });

/** Follows one head from egg or hatch in the engine's chain; adults are kept, so that they count who matured. */
export function rear(species: PreySpecies, { temp, from, days }: Start): Rearing {
  const chain = chainOf(species);
  const grown = chain.stages.find(({ kind }) => kind === 'adult')!.first;
  const rates = keptAdults(
    ratesOfDay(chain, { temp, weekMeanC: meanOfDay(temp), speed: 1, holdingLossPerDay: 0, laying: 0 }),
    grown,
  );
  let heads = new Float64Array(chain.size);
  heads[from === 'egg' ? 0 : firstYoung(chain)] = 1;
  const [adult, young, medianMassMg]: [number[], number[], number[]] = [[], [], []];
  for (let day = 0; day <= days; day++) {
    adult.push(totalHeads(heads, grown));
    young.push(totalHeads(heads) - totalHeads(heads, grown));
    medianMassMg.push(massMg(species, medianLength(heads, chain.fromMm, chain.toMm)));
    heads = new Float64Array(dayOfChain(heads, rates).heads);
  }
  return { adult, young, medianMassMg };
}

function keptAdults(rates: ChainRates, grown: number): ChainRates {
  const kept = (values: Float64Array) => values.map((rate, j) => (j < grown ? rate : 0));
  return { ...rates, exit: kept(rates.exit), advance: kept(rates.advance) };
}

function medianLength(heads: Float64Array, fromMm: Float64Array, toMm: Float64Array): number {
  const half = totalHeads(heads) / 2;
  let below = 0;
  let j = 0;
  while (j < heads.length - 1 && below + heads[j]! < half) below += heads[j++]!;
  return fromMm[j]! + ((toMm[j]! - fromMm[j]!) * (half - below)) / heads[j]!;
}

export interface TimeToAdult {
  readonly days: number;
  readonly cv: number;
  readonly survival: number;
}

/**
 * Mean and CV of the days to adult among those who get there. With F the share of them grown by day t, the mean is the
 * integral of 1 - F and half the second moment that of t(1 - F); both as sums over whole days with the end terms of
 * Euler and Maclaurin (1/2, and 1/12 for the slope 1 of t(1 - F) at 0).
 */
export function timeToAdult(species: PreySpecies, start: Omit<Start, 'days'>): TimeToAdult {
  const { adult } = rear(species, { ...start, days: 900 });
  const survival = adult.at(-1)!;
  const later = adult.map((share) => 1 - share / survival);
  const mean = later.slice(1).reduce((sum, share) => sum + share, 1 / 2);
  const half = later.reduce((sum, share, day) => sum + share * day, 1 / 12);
  return { days: mean, cv: Math.sqrt(2 * half - mean * mean) / mean, survival };
}
