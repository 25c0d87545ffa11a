/** What an event teaches of sizes, and so of growth speed. */

import { refined, refinedShares } from '../../maths/belief-grid.ts';
import { logSdOf } from '../../maths/log-normal.ts';
import type { BinEvent, Sample } from './bin.ts';
import {
  adultsNow,
  cellWeights,
  isUnexplained,
  type Mind,
  meanHeads,
  middleOf,
  noteSeen,
  signsNow,
  speedWeights,
} from './mind.ts';
import { chanceOfFirstAdults, chanceOfLook, fitOfWeight, lnRange, type SizeSigns } from './size-signs.ts';

/** Learns what the event says of sizes; false where no growth speed explains them. */
export function learnSizes(mind: Mind, event: BinEvent): boolean {
  switch (event.kind) {
    case 'size seen':
      return readSizes(mind, rangeChances(mind, event));
    case 'counted':
      if (event.fromMm !== null && event.toMm !== null)
        readSizes(mind, rangeChances(mind, { fromMm: event.fromMm, toMm: event.toMm }));
      return true;
    case 'weighed':
      if (event.sample) readSizes(mind, weightFits(mind, event.sample));
      return true;
    case 'first adults':
      noteSeen(mind, { firstAdults: mind.evidence.firstAdults + 1 });
      return weighSpeeds(mind, firstAdultChances(mind));
    default:
      return true;
  }
}

function readSizes(mind: Mind, chances: Float64Array | null): boolean {
  noteSeen(mind, { sizes: mind.evidence.sizes + 1 });
  return weighSpeeds(mind, chances);
}

function weighSpeeds(mind: Mind, chances: Float64Array | null): boolean {
  if (chances === null) return true;
  const odds = speedWeights(mind).reduce((sum, weight, k) => sum + weight * (chances[k] as number), 0);
  if (isUnexplained(mind, odds)) {
    return false;
  }
  chances.forEach((chance, k) => {
    mind.lnSizes[k] = (mind.lnSizes[k] as number) + Math.log(Math.max(chance, Number.MIN_VALUE));
  });
  return true;
}

/** One of the signs at the fine speeds; null of an empty bin. */
function refinedSigns(
  signs: readonly (SizeSigns | null)[],
  of: (sign: SizeSigns) => number,
): Float64Array | null {
  return signs.includes(null) ? null : refined(Float64Array.from(signs, (sign) => of(sign as SizeSigns)));
}

function rangeChances(mind: Mind, range: { fromMm: number; toMm: number }): Float64Array | null {
  const ln = lnRange(middleOf(mind.lives).chain, range);
  const logSd = logSdOf(mind.policy.sizeSeenCv.value);
  const medians = refinedSigns(signsNow(mind), ({ lnMedianMm }) => lnMedianMm);
  return medians?.map((median) => chanceOfLook(median, ln, logSd)) ?? null;
}

function weightFits(mind: Mind, { heads, massMg, cv }: Sample): Float64Array | null {
  const signs = signsNow(mind);
  const one = cv ?? middleOf(signs)?.massCv ?? 0;
  const logSd = logSdOf(Math.hypot(one / Math.sqrt(heads), mind.policy.weighCv.value));
  const means = refinedSigns(signs, ({ lnMeanMg }) => lnMeanMg);
  return means?.map((mean) => fitOfWeight(mean, Math.log(massMg / heads), logSd)) ?? null;
}

/** Since somebody last looked inside; no more heads can be looked at than there are. */
function firstAdultChances(mind: Mind): Float64Array {
  const lookedAt = Math.min(mind.policy.headsLookedAt.value, meanHeads(mind, cellWeights(mind)));
  const [before, now] = [refinedShares(mind.adultsBefore), refinedShares(adultsNow(mind))];
  return now.map((share, k) => chanceOfFirstAdults(before[k] as number, share, lookedAt));
}
