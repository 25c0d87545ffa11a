/** What becomes of a plan in the mean of its fates: who eats what, who waits, who goes without. */
import { settleInFates } from './fate-cost.ts';
import { type Noted, roomFor } from './fate-room.ts';
import type { Fates } from './fates.ts';
import { livingOf } from './living.ts';
import { countedOn } from './nodes.ts';
import type { PlanEater, PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';
import type { Fine } from './told.ts';

/** Means over the fates of what is noted in them, and what is taken and missed in each; items wanted and missed at [period * groups + group]. */
export interface LivedInFates extends Noted {
  readonly fates: number;
  readonly wanted: Float64Array;
  readonly missed: Float64Array;
}

/** Lives decisions through in all fates; `fine`: their problem with those who eat told finely. */
export function livedInFates(
  { fates }: { readonly fates: Fates },
  fine: PlanProblem,
  decided: Decisions,
): LivedInFates {
  const living = livingOf(fine);
  const moments = fates.periods * fates.eaters;
  const noted: Noted = {
    eaten: new Float64Array(moments * living.nodes),
    taken: new Float64Array(fates.count * fates.periods * living.nodes),
    late: new Float64Array(moments),
    ready: new Float64Array(moments),
    missedIn: new Float64Array(fates.count * moments),
    endCents: new Float64Array(1),
  };
  settleInFates({ ...roomFor(fates, living, fates.count), noted }, decided);
  const mean = (sums: Float64Array) => sums.map((sum) => sum / fates.count);
  const meanOver = (byFate: Float64Array) => mean(overFates(byFate, moments));
  return {
    fates: fates.count,
    eaten: mean(noted.eaten),
    taken: noted.taken,
    late: mean(noted.late),
    missed: meanOver(noted.missedIn),
    missedIn: noted.missedIn,
    ready: mean(noted.ready),
    endCents: mean(noted.endCents),
    wanted: meanOver(fates.wanted),
  };
}

/** Sums over the fates of what is noted of each moment in each. */
function overFates(byFate: Float64Array, moments: number): Float64Array {
  const sums = new Float64Array(moments);
  for (let at = 0; at < byFate.length; at++)
    sums[at % moments] = (sums[at % moments] as number) + (byFate[at] as number);
  return sums;
}

/** Items of one fine group over all periods. */
export function overPeriods(byMoment: Float64Array, { e, groups }: { e: number; groups: number }): number {
  let sum = 0;
  for (let at = e; at < byMoment.length; at += groups) sum += byMoment[at] as number;
  return sum;
}

/** Heads eaten, and the items they stand for. */
export interface Taken {
  readonly heads: number;
  readonly items: number;
}

interface Eater {
  readonly e: number;
  readonly t: number;
  /** Which nodes of which fine places count. */
  readonly from: (place: number, node: number) => boolean;
}

/** What one fine group eats in a period out of some nodes. */
export function eatenBy({ nodes, eaters }: Fine, { eaten }: LivedInFates, { e, t, from }: Eater): Taken {
  const { first, all } = countedOn(nodes);
  const row = (t * eaters.length + e) * all;
  let [heads, items] = [0, 0];
  for (const { place, node, items: worth } of (eaters[e] as PlanEater).fare) {
    if (!from(place, node)) continue;
    const taken = eaten[row + (first[place] as number) + node] as number;
    heads += taken;
    items += taken * worth;
  }
  return { heads, items };
}
