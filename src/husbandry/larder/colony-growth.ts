/** What a colony with room does in the long run: how fast it grows, of what it then consists, what may be taken. */
import { growthOf, shareToSpare } from '../../maths/growth-rate.ts';
import type { ChainRates } from '../../maths/uniformise.ts';
import { DAYS_PER_WEEK } from '../units.ts';

export interface ColonyGrowth {
  /** Growth rate per day [r] and factor per week [lambda = exp(7 r)]. */
  readonly perDay: number;
  readonly perWeek: number;
  /** Null where it does not grow. */
  readonly doublingDays: number | null;
  /** Shares by substage in the long run, summing to 1. */
  readonly stable: Float64Array;
  /** Worth of one head of each substage to the future colony; that of an egg or newborn 1. */
  readonly reproductive: Float64Array;
  /** Mean age of the mothers of a day's eggs or young, from their own egg or birth, in the stable colony. */
  readonly generationDays: number;
  /** Largest share of every size that can be taken each week for ever: 1 - 1/lambda, 0 where it does not grow. */
  readonly weeklyShare: number;
}

/** At these rates, every day alike; null where nobody breeds. */
export function colonyGrowth(rates: ChainRates): ColonyGrowth | null {
  const growth = growthOf(rates);
  if (growth === null) return null;
  const { rate, stable, reproductive, generation } = growth;
  const perWeek = Math.exp(rate * DAYS_PER_WEEK);
  return {
    perDay: rate,
    perWeek,
    doublingDays: rate > 0 ? Math.LN2 / rate : null,
    stable,
    reproductive,
    generationDays: generation,
    weeklyShare: shareToSpare(perWeek),
  };
}
