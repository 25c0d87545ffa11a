/** What the sizes in a bin say of its growth speed: how likely each speed held what was seen to be. */
import { normalCdf } from '../../maths/normal.ts';
import type { Mm } from '../units.ts';
import type { Chain } from './chain.ts';
import { massIn, massOf, totalHeads } from './lot.ts';

/** What can be seen of a bin's sizes. */
export interface SizeSigns {
  readonly lnMedianMm: number;
  readonly lnMeanMg: number;
  /** Spread (CV) of the masses of single heads. */
  readonly massCv: number;
}

/** The signs of a bin's heads; null of an empty one. */
export function signsOf(chain: Chain, heads: Float64Array): SizeSigns | null {
  const total = totalHeads(heads, chain.firstHead);
  if (total <= 0) return null;
  const mean = massOf(chain, heads) / total;
  let spread = 0;
  for (let j = chain.firstHead; j < heads.length; j++)
    spread += (heads[j] as number) * (massIn(chain, j) - mean) ** 2;
  return {
    lnMedianMm: Math.log(medianMm(chain, heads, total)),
    lnMeanMg: Math.log(mean),
    massCv: Math.sqrt(spread / total) / mean,
  };
}

/** Length of the middle one of the heads, eggs apart. */
function medianMm(chain: Chain, heads: Float64Array, total: number): Mm {
  let j = chain.firstHead;
  let below = 0;
  while (j < heads.length - 1 && below + (heads[j] as number) < total / 2) below += heads[j++] as number;
  const within = (total / 2 - below) / (heads[j] as number);
  const [from, to] = [chain.fromMm[j] as number, chain.toMm[j] as number];
  return from + (to - from) * Math.min(1, Math.max(0, within));
}

/** Lengths a bin looks to have; a class that no head is too long or too short for is open at that end. */
export function lnRange(chain: Chain, { fromMm, toMm }: { fromMm: Mm; toMm: Mm }): readonly [number, number] {
  const shortest = chain.fromMm[chain.firstHead] as number;
  const longest = chain.toMm[chain.size - 1] as number;
  return [
    fromMm <= shortest ? Number.NEGATIVE_INFINITY : Math.log(fromMm),
    toMm > longest ? Number.POSITIVE_INFINITY : Math.log(toMm),
  ];
}

/** Chance that a bin of this median is taken for the range, when the eye errs by a factor of this log-sd. */
export function chanceOfLook(
  lnMedianMm: number,
  [from, to]: readonly [number, number],
  logSd: number,
): number {
  const below = (ln: number): number =>
    Number.isFinite(ln) ? normalCdf((ln - lnMedianMm) / logSd) : Number(ln > 0);
  return below(to) - below(from);
}

/** Chance that no adult was seen at one share of adults and the first at another, of so many heads looked at each time. */
export const chanceOfFirstAdults = (shareBefore: number, shareNow: number, lookedAt: number): number =>
  Math.exp(-lookedAt * shareBefore) * -Math.expm1(-lookedAt * shareNow);

/** Density of the log of a mean weight read, over its greatest, when it errs by a factor of this log-sd. */
export const fitOfWeight = (lnMeanMg: number, lnReadMg: number, logSd: number): number =>
  Math.exp(-(((lnReadMg - lnMeanMg) / logSd) ** 2) / 2);
