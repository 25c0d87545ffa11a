/** Who eats what a step of a plan brings: its heads followed through the flows, in proportion within each node. */
import type { PlanProblem } from './problem.ts';
import type { Flows } from './proposal.ts';
import { usedOf } from './used.ts';

/** Heads that come by node in each period, all to one place. */
export interface Source {
  readonly place: number;
  readonly comes: readonly Float64Array[];
}

export interface Traced {
  /** Heads eaten by eater and period. */
  readonly heads: readonly Float64Array[];
  readonly eatenHeads: number;
  /** Heads by node that are left after each period's meals. */
  readonly stays: readonly Float64Array[];
  /** Of them those after the last. */
  readonly leftHeads: Float64Array;
}

/** Of the heads of a node each source has its share, in what is used as in what is left. */
export function traced(problem: PlanProblem, flows: Flows, { place, comes }: Source): Traced {
  const { eaters, periods, places } = problem;
  const at = places[place] as PlanProblem['places'][number];
  const eaten = eaters.map(() => new Float64Array(periods));
  const stayed: Float64Array[] = [];
  let eatenHeads = 0;
  let mine = new Float64Array(at.nodes);
  for (let t = 0; t < periods; t++) {
    mine = mine.map((heads, n) => heads + (comes[t]?.[n] ?? 0));
    const left = flows.left[place]?.[t] as Float64Array;
    const gone = usedOf(problem, flows, [place, t]);
    const share = mine.map((heads, n) => {
      const there = (left[n] as number) + (gone[n] as number);
      return there > 0 ? Math.min(1, heads / there) : 0;
    });
    eaters.forEach(({ fare }, e) => {
      fare.forEach((each, k) => {
        if (each.place !== place) return;
        const heads = (flows.use[e]?.[t]?.[k] ?? 0) * (share[each.node] as number);
        (eaten[e] as Float64Array)[t] = ((eaten[e] as Float64Array)[t] as number) + heads;
        eatenHeads += heads;
      });
    });
    const stays = mine.map((_, n) => (share[n] as number) * (left[n] as number));
    stayed.push(stays);
    const pass = at.passes[t];
    mine = pass
      ? Float64Array.from(pass, (row) =>
          row.reduce((sum, part, from) => sum + part * (stays[from] as number), 0),
        )
      : stays;
  }
  return { heads: eaten, eatenHeads, stays: stayed, leftHeads: mine };
}
