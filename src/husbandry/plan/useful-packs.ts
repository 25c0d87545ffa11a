/** How many packs of an offer could be of use: to those who eat within the plan, and to them after it. */
import { afterStep } from '../../maths/chain-step.ts';
import type { Buying } from './parcels.ts';
import type { Fare, PlanPlace } from './problem.ts';

/** A pack from the period on in which it comes. */
interface Followed {
  readonly place: number;
  readonly period: number;
  readonly heads: Float64Array;
}

/**
 * Most packs that could be of use: for every eater and period the packs that would feed it alone, as long as enough of
 * the pack suits it, doubled for what is to stand ready; none of a pack in which nothing is alive by then.
 */
export function mostUseful(
  { place, period, heads }: Followed,
  { planPlaces, eaters, policy, periods }: Pick<Buying, 'planPlaces' | 'eaters' | 'policy' | 'periods'>,
): number {
  const { passes } = planPlaces[place] as PlanPlace;
  const all = heads.reduce((a, b) => a + b, 0);
  if (all <= 0) return 0;
  const least = policy.planReachShare.value * all;
  let packs = 0;
  let now = heads;
  for (let t = period; t < periods.length; t++) {
    for (const { fare, wanted } of eaters)
      packs += (wanted[t] as number) / itemsIn(now, { fare, place, least });
    const pass = passes[t];
    if (pass) now = afterStep(now, pass);
  }
  // The end alone is no use.
  if (packs === 0) return 0;
  for (const { end } of eaters) {
    const fits = end.fare.filter((each) => each.place === place && (now[each.node] as number) > 0);
    packs +=
      (end.weekly * Math.max(0, ...fits.map(({ until }) => until))) /
      itemsIn(now, { fare: fits, place, least });
  }
  return Math.ceil(2 * packs);
}

interface Suiting {
  readonly fare: readonly Pick<Fare, 'place' | 'node' | 'items'>[];
  readonly place: number;
  /** Heads that must suit. */
  readonly least: number;
}

/** Items the heads of a pack are for those who eat of this fare; Infinity where too few suit them. */
function itemsIn(heads: Float64Array, { fare, place, least }: Suiting): number {
  const fits = fare.filter((each) => each.place === place);
  const suits = fits.reduce((sum, { node }) => sum + (heads[node] as number), 0);
  if (suits < least) return Number.POSITIVE_INFINITY;
  return fits.reduce((sum, { node, items }) => sum + (heads[node] as number) * items, 0);
}
