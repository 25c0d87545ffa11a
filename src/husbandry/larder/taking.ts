/** What can be taken out of a bin, and the lots in which it comes into another with its lengths kept. */
import type { DayNumber } from '../calendar.ts';
import type { Mm } from '../units.ts';
import type { BinEvent, Lot } from './bin.ts';
import type { Chain } from './chain.ts';
import { between, firstAdult, firstYoung, totalHeads } from './lot.ts';

export interface LengthRange {
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** All that is no egg, from the newly hatched to the grown. */
export const everySize = (chain: Chain): LengthRange => ({
  fromMm: chain.fromMm[firstYoung(chain)] as number,
  toMm: chain.toMm[chain.size - 1] as number,
});

/** Adults are of one length. */
const adultMm = (chain: Chain): Mm => chain.toMm[chain.size - 1] as number;
/** A length is written down a little less exactly than it is reckoned: what is just below or above one is off by more. */
const BELOW = 1 - Math.sqrt(Number.EPSILON);

/** The length of adults, however it was rounded. */
export const adultSize = (chain: Chain): LengthRange => ({
  fromMm: adultMm(chain) * BELOW,
  toMm: adultMm(chain) / BELOW,
});

/** So many adults as a lot: a little above their length, since beetles and moths are shorter than they were as larvae. */
export function adultLot(chain: Chain, heads: number): Lot {
  const { toMm } = adultSize(chain);
  return { heads, fromMm: toMm, toMm };
}

/** The same range without the adults, who are kept to breed: its end lies just below their length. */
export function withoutAdults(chain: Chain, { fromMm, toMm }: LengthRange): LengthRange {
  const belowMm = adultSize(chain).fromMm;
  return { fromMm: Math.min(fromMm, belowMm), toMm: Math.min(toMm, belowMm) };
}

interface Taking extends LengthRange {
  readonly heads: number;
}

/**
 * So many heads of these lengths as lots of whole heads: the grown as one, the growing cut into at most `parts` by rank
 * of length, each spread evenly over its own lengths. Where none are known of, one lot over the lengths asked for.
 */
export function lotsTaken(chain: Chain, heads: Float64Array, { taking, parts }: Lots): readonly Lot[] {
  const within = between(chain, heads, taking);
  const there = totalHeads(within);
  if (there <= 0) return taking.heads > 0 ? [{ ...taking }] : [];
  const grown = Math.round((taking.heads * totalHeads(within, firstAdult(chain))) / there);
  const young = within.subarray(0, firstAdult(chain));
  const adults = grown > 0 ? [adultLot(chain, grown)] : [];
  const growing = youngLots(chain, young, { heads: taking.heads - grown, parts });
  return [...growing.map((lot) => heldTo(lot, taking)), ...adults];
}

interface Lots {
  readonly taking: Taking;
  readonly parts: number;
}

/** A substage reaches beyond the lengths asked for; what was taken of it does not. */
const heldTo = ({ heads, fromMm, toMm }: Lot, range: LengthRange): Lot => ({
  heads,
  fromMm: Math.min(Math.max(fromMm, range.fromMm), range.toMm),
  toMm: Math.max(Math.min(toMm, range.toMm), range.fromMm),
});

/** Equal parts by rank; no part is less than one head. */
function youngLots(chain: Chain, young: Float64Array, wanted: { heads: number; parts: number }): Lot[] {
  const parts = Math.min(wanted.parts, wanted.heads);
  return Array.from({ length: parts }, (_, part) => ({
    heads: Math.round((wanted.heads * (part + 1)) / parts) - Math.round((wanted.heads * part) / parts),
    fromMm: lengthAtRank(chain, young, part / parts),
    toMm: lengthAtRank(chain, young, (part + 1) / parts),
  }));
}

/** Length of the middle one of those hatched; 0 where there are none. */
export function medianLength(chain: Chain, heads: Float64Array): Mm {
  const hatched = heads.map((n, j) => (j < firstYoung(chain) ? 0 : n));
  return totalHeads(hatched) > 0 ? lengthAtRank(chain, hatched, 1 / 2) : 0;
}

/** Length below which this share of the heads is. */
function lengthAtRank(chain: Chain, heads: Float64Array, share: number): Mm {
  const rank = share * totalHeads(heads);
  const last = heads.findLastIndex((n) => n > 0);
  let at = heads.findIndex((n) => n > 0);
  let below = 0;
  while (at < last && below + (heads[at] as number) < rank) below += heads[at++] as number;
  const within = Math.min(1, Math.max(0, (rank - below) / (heads[at] as number)));
  const [from, to] = [chain.fromMm[at] as number, chain.toMm[at] as number];
  return from + (to - from) * within;
}

/** Heads fed, otherwise taken out and brought in after a day, until the next count. */
export function headsSince(
  events: readonly BinEvent[],
  day: DayNumber,
): { readonly fed: number; readonly out: number; readonly came: number } {
  const after = events.filter((event) => event.day > day);
  const next = after.findIndex(({ kind }) => kind === 'counted' || kind === 'died off');
  const sums = { fed: 0, out: 0, came: 0 };
  for (const event of next < 0 ? after : after.slice(0, next)) {
    if (event.kind === 'offered') sums.fed += event.heads;
    if (event.kind === 'culled' || event.kind === 'moved out' || event.kind === 'discarded')
      sums.out += event.heads;
    if (event.kind === 'delivered' || event.kind === 'moved in') sums.came += event.lot.heads;
  }
  return sums;
}
