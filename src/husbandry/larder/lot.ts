/** Prey by length: how a lot spreads over the substages of its species, and what lies between two lengths. */
import type { PreySpecies } from '../prey/index.ts';
import { LENGTH_TO_MASS, type Mg, type Mm } from '../units.ts';
import type { Chain } from './chain.ts';

/** Share of a substage that lies between two lengths; a stage of one length lies in or out as a whole. */
function overlapShare(chain: Chain, substage: number, range: { fromMm: Mm; toMm: Mm }): number {
  const low = chain.fromMm[substage] as number;
  const high = chain.toMm[substage] as number;
  if (high <= low) return range.fromMm <= low && low <= range.toMm ? 1 : 0;
  return Math.max(0, Math.min(high, range.toMm) - Math.max(low, range.fromMm)) / (high - low);
}

/**
 * Heads by substage of a lot whose lengths are spread evenly from `fromMm` to `toMm`. What would be longer than a
 * growing animal gets is taken for adults, spread evenly over adult age; what would be shorter, for the newly hatched.
 */
export function spreadLot(chain: Chain, lot: { heads: number; fromMm: Mm; toMm: Mm }): Float64Array {
  const heads = new Float64Array(chain.size);
  if (lot.heads <= 0) return heads;
  const adult = firstAdult(chain);
  const adultMm = chain.toMm[adult - 1] as number;
  const width = lot.toMm - lot.fromMm;
  const weightOf = (low: number, high: number) =>
    width > 0
      ? Math.max(0, Math.min(high, lot.toMm) - Math.max(low, lot.fromMm)) / width
      : Number(low <= lot.fromMm && lot.fromMm < high);
  const youngest = firstYoung(chain);
  heads[youngest] = weightOf(0, chain.fromMm[youngest] as number);
  for (let j = youngest; j < adult; j++) {
    heads[j] = (heads[j] as number) + weightOf(chain.fromMm[j] as number, chain.toMm[j] as number);
  }
  const adults = weightOf(adultMm, Number.POSITIVE_INFINITY) / (chain.size - adult);
  for (let j = adult; j < chain.size; j++) heads[j] = adults;
  return scaleTo(heads, lot.heads);
}

/** First substage after the egg. */
export const firstYoung = (chain: Chain): number =>
  chain.stages.find(({ kind }) => kind !== 'egg')?.first ?? 0;

/** First substage of the adults. */
export const firstAdult = (chain: Chain): number =>
  chain.stages.find(({ kind }) => kind === 'adult')?.first ?? chain.size;

/** Live mass of one head of this length, mg. */
export const massMg = (species: PreySpecies, lengthMm: Mm): Mg =>
  species.massPerCubicMm.value * lengthMm ** LENGTH_TO_MASS;

/** Live mass of one head half-way through a substage, mg. */
export const massIn = (chain: Chain, substage: number): Mg =>
  massMg(chain.species, ((chain.fromMm[substage] as number) + (chain.toMm[substage] as number)) / 2);

/** Mass of all heads, eggs apart, mg. */
export function massOf(chain: Chain, heads: Float64Array): Mg {
  let mass = 0;
  for (let j = chain.firstHead; j < heads.length; j++) mass += (heads[j] as number) * massIn(chain, j);
  return mass;
}

/** The same distribution with this total; an empty one stays empty. */
export function scaleTo(heads: Float64Array, total: number): Float64Array {
  const sum = totalHeads(heads);
  return sum > 0 ? heads.map((n) => (n * total) / sum) : heads.slice();
}

/** Sum over substages, from one of them on. */
export function totalHeads(heads: Float64Array, from = 0): number {
  let sum = 0;
  for (let j = from; j < heads.length; j++) sum += heads[j] as number;
  return sum;
}

/** The heads, eggs apart, whose lengths lie between two bounds, by substage. */
export const between = (chain: Chain, heads: Float64Array, range: { fromMm: Mm; toMm: Mm }): Float64Array =>
  heads.map((n, j) => (j < chain.firstHead ? 0 : n * overlapShare(chain, j, range)));

/** Heads whose lengths lie between two bounds; eggs, and in a cup maggots, are none. */
export const headsWithin = (chain: Chain, heads: Float64Array, range: { fromMm: Mm; toMm: Mm }): number =>
  totalHeads(between(chain, heads, range));

/**
 * Takes heads whose lengths lie between two bounds, in proportion to what is there; when too few are, the rest from
 * all sizes. Returns what is left and what could not be taken.
 */
export function takeBetween(
  chain: Chain,
  heads: Float64Array,
  wanted: { heads: number; fromMm: Mm; toMm: Mm },
): { left: Float64Array; short: number } {
  const left = heads.slice();
  let there = 0;
  for (let j = chain.firstHead; j < heads.length; j++)
    there += (heads[j] as number) * overlapShare(chain, j, wanted);
  const fitting = Math.min(wanted.heads, there);
  for (let j = chain.firstHead; j < heads.length && there > 0; j++)
    left[j] = (left[j] as number) * (1 - (overlapShare(chain, j, wanted) * fitting) / there);
  return takeAny(chain, left, wanted.heads - fitting);
}

/** Takes heads of all sizes in proportion to what is there. */
export function takeAny(
  chain: Chain,
  heads: Float64Array,
  wanted: number,
): { left: Float64Array; short: number } {
  const there = totalHeads(heads, chain.firstHead);
  const taken = Math.min(wanted, there);
  if (taken <= 0) return { left: heads, short: Math.max(0, wanted) };
  const left = heads.slice();
  for (let j = chain.firstHead; j < left.length; j++) left[j] = (left[j] as number) * (1 - taken / there);
  return { left, short: wanted - taken };
}
