/** What is eaten of a place in the flows of a plan. */
import type { PlanPlace, PlanProblem } from './problem.ts';
import type { Flows } from './proposal.ts';

/** Heads of each of its nodes that are used in a period. */
export function usedOf({ eaters, places }: PlanProblem, { use }: Flows, [p, t]: readonly [number, number]) {
  const used = new Float64Array((places[p] as PlanPlace).nodes);
  eaters.forEach(({ fare }, e) => {
    fare.forEach(({ place, node }, k) => {
      if (place === p) used[node] = (used[node] as number) + (use[e]?.[t]?.[k] ?? 0);
    });
  });
  return used;
}
