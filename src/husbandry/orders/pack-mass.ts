/** What a head of a pack weighs, where only the least and the greatest length in it are known. */
import { LENGTH_TO_MASS, MG_PER_GRAM, type Mg, type Mm } from '../units.ts';
import type { Offer } from './market.ts';

export interface HeadMass {
  readonly meanMg: Mg;
  /** Spread of single weights, standard deviation over mean. */
  readonly cv: number;
}

/**
 * Lengths lie anywhere between a and b alike, and mass is c L^3: E[L^k] = (b^(k+1) - a^(k+1)) / ((k+1) (b - a)), so that
 * mean = c E[L^3] and cv^2 = E[L^6] / E[L^3]^2 - 1.
 */
export function headMassBetween(
  { fromMm, toMm }: { readonly fromMm: Mm; readonly toMm: Mm },
  massPerCubicMm: Mg,
): HeadMass {
  const cube = meanPower(fromMm, toMm, LENGTH_TO_MASS);
  const sixth = meanPower(fromMm, toMm, 2 * LENGTH_TO_MASS);
  return { meanMg: massPerCubicMm * cube, cv: Math.sqrt(Math.max(0, sixth / cube ** 2 - 1)) };
}

/** Packs of an offer. */
export interface Packed<O extends Pick<Offer, 'species' | 'fromMm' | 'toMm' | 'packHeads'>> {
  readonly offer: O;
  readonly packs: number;
}

/** Live mass of packs, in grams; mass of a body one millimetre long by species. */
export const liveGrams = (
  lines: readonly Packed<Pick<Offer, 'species' | 'fromMm' | 'toMm' | 'packHeads'>>[],
  perCubicMm: (species: string) => Mg,
): number =>
  lines.reduce((sum, { offer, packs }) => {
    const { meanMg } = headMassBetween(offer, perCubicMm(offer.species));
    return sum + (packs * offer.packHeads * meanMg) / MG_PER_GRAM;
  }, 0);

const meanPower = (a: Mm, b: Mm, k: number): number =>
  b > a ? (b ** (k + 1) - a ** (k + 1)) / ((k + 1) * (b - a)) : a ** k;
