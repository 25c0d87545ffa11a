/**
 * Improves decisions step by step: a pack more or less, a line dropped, put into the parcel before or after, a whole
 * parcel moved or left out, a colony left alone for longer or less long. Every step that costs less is taken; the search
 * ends where none does, or its trials are used up.
 */
import { dayKey, joinKeys, mix32, purposes, whole } from '../../maths/random.ts';
import { isAllowed } from './allowed.ts';
import { changesOf, copyOf, type Draft } from './changes.ts';
import type { PlanParcel, PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

export interface Searched extends Decisions {
  /** Infinity where nothing that is allowed was found. */
  readonly cost: number;
  readonly trials: number;
}

/** A problem, and what decisions cost in it. */
export interface Costing {
  readonly problem: PlanProblem;
  readonly costOf: (decided: Decisions) => number;
  /** Cost of decisions from which others will be tried; and of such others, the same before a period. */
  readonly settle?: (decided: Decisions) => number;
  readonly costFrom?: (decided: Decisions, period: number) => number;
}

export interface Searching {
  /** Plans tried at most. */
  readonly trials: number;
  readonly seed: number;
}

/**
 * The best decisions found from these on; what is not allowed is never tried. Where no step helps, a few steps are
 * taken at random and the search goes on from there; the same seed gives the same plan.
 */
export function searchFrom(costing: Costing, start: Decisions, { trials: most, seed }: Searching): Searched {
  let best = descent(costing, start, most);
  let trials = best.trials;
  for (let kick = 0; trials < most; kick++) {
    const kicked = kickedFrom(costing.problem, best, joinKeys(mix32(seed), kick));
    const tried = descent(costing, kicked, most - trials);
    trials += Math.max(1, tried.trials);
    if (tried.cost < best.cost) best = tried;
  }
  return { ...best, trials };
}

/** Every step that costs less, until none does. */
function descent(costing: Costing, start: Decisions, most: number): Searched {
  const { problem, costOf, settle = costOf, costFrom = costOf } = costing;
  let best = copyOf(start);
  const settled = settle(best);
  let cost = isAllowed(problem, best) ? settled : Number.POSITIVE_INFINITY;
  let trials = 0;
  for (let isBetter = true; isBetter && trials < most; ) {
    isBetter = false;
    for (const change of changesOf(problem, best)) {
      if (trials >= most) break;
      const draft = copyOf(best);
      change(draft);
      if (!isAllowed(problem, draft)) continue;
      trials++;
      const tried = costFrom(draft, firstChange(problem, best, draft));
      if (tried >= cost * (1 - Number.EPSILON) - Number.EPSILON) continue;
      best = draft;
      cost = settle(best);
      isBetter = true;
    }
  }
  return { ...best, cost, trials };
}

/** First period that two plans of one problem may differ in. */
function firstChange({ parcels, starts, rests, periods }: PlanProblem, a: Decisions, b: Decisions): number {
  let first = periods;
  for (let i = 0; i < parcels.length; i++) {
    const { period } = parcels[i] as PlanParcel;
    if (period < first && a.packs[i]?.some((count, j) => count !== b.packs[i]?.[j])) first = period;
  }
  for (let i = 0; i < starts.length; i++)
    if (a.cups[i] !== b.cups[i]) first = Math.min(first, starts[i]?.period ?? 0);
  for (let i = 0; i < rests.length; i++) {
    const [was, now] = [a.rests[i] as number, b.rests[i] as number];
    if (was !== now) first = Math.min(first, was, now);
  }
  return first;
}

const FOR = purposes('change');

/** A few allowed changes drawn at random. */
function kickedFrom(problem: PlanProblem, start: Decisions, key: number): Draft {
  let draft = copyOf(start);
  const changes = changesOf(problem, draft);
  for (let i = 0; i <= 2 && changes.length > 0; i++) {
    const next = copyOf(draft);
    changes[whole(dayKey(key, i), FOR.change, changes.length)]?.(next);
    if (isAllowed(problem, next)) draft = next;
  }
  return draft;
}
