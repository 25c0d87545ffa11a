/** Prey of places that are left alone, set aside while everybody eats: taken only for who finds nothing else. */
import type { PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

/** Nodes of one place, and the period from which it is eaten from like all others. */
export interface SetAside {
  readonly first: number;
  readonly nodes: number;
  readonly until: number;
}

/** Of a problem whose places begin at these nodes. */
export const asideIn = (
  { places, rests }: PlanProblem,
  first: readonly number[],
  decided: Pick<Decisions, 'rests'>,
): SetAside[] =>
  rests.flatMap(({ place }, i) => {
    const until = decided.rests[i] as number;
    return until > 0 ? [{ first: first[place] as number, nodes: places[place]?.nodes ?? 0, until }] : [];
  });

interface Heads {
  readonly there: Float64Array;
  /** What is set aside; 0 of all else. */
  readonly aside: Float64Array;
}

/** Moves what is left alone in a period out of what is there; returns whether there is any. */
export function setAside(all: readonly SetAside[], t: number, { there, aside }: Heads): boolean {
  let isAny = false;
  for (let k = 0; k < all.length; k++) {
    const { first, nodes, until } = all[k] as SetAside;
    if (until <= t) continue;
    isAny = true;
    for (let n = first; n < first + nodes; n++) {
      aside[n] = there[n] as number;
      there[n] = 0;
    }
  }
  return isAny;
}

/** Moves what is left of it back. */
export function putBack(all: readonly SetAside[], t: number, { there, aside }: Heads): void {
  for (let k = 0; k < all.length; k++) {
    const { first, nodes, until } = all[k] as SetAside;
    if (until <= t) continue;
    for (let n = first; n < first + nodes; n++) {
      there[n] = aside[n] as number;
      aside[n] = 0;
    }
  }
}
