/** What an own colony costs against buying everything, week by week. */
import type { StartWeek } from './start-path.ts';

/** In one currency, whichever. */
export interface Prices {
  /** One head bought. */
  readonly perHead: number;
  /** All starters, with what they are set up in. */
  readonly starters: number;
  /** Heat and feed of a week. */
  readonly perWeek: number;
}

/** Costs summed up to a week. */
export interface Costs {
  readonly own: number;
  readonly bought: number;
}

/** Own: starters, heat, feed and what must be bought meanwhile; against all wanted heads bought. */
export function costsOf(path: readonly StartWeek[], prices: Prices): Costs[] {
  let own = prices.starters;
  let bought = 0;
  return path.map((week) => {
    own += prices.perWeek + week.bought * prices.perHead;
    bought += (week.bought + week.taken.reduce((a, b) => a + b, 0)) * prices.perHead;
    return { own, bought };
  });
}

/** First week from which the colony has cost no more than buying, to the end of the path; null where none. */
export function breakEvenWeek(costs: readonly Costs[]): number | null {
  const lastDearer = costs.findLastIndex(({ own, bought }) => own > bought);
  return lastDearer + 1 < costs.length ? lastDearer + 2 : null;
}
