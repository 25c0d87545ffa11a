/** The optimum of a plan's problem, every pack whole, as the programme finds it. */

import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { type Laid, programmeOf } from '../../../src/husbandry/plan/programme.ts';
import { type Solved, solver } from '../../../src/maths/linear-programme.ts';

const solve = await solver();

type Found = Extract<Solved, { columns: Float64Array }>;

export interface Optimum {
  readonly laid: Laid;
  readonly found: Found;
}

/** Null where nothing can be carried out. */
export function optimumOf(problem: PlanProblem, wholeUntil = problem.periods): Optimum | null {
  const laid = programmeOf({ ...problem, wholeUntil });
  const found = solve(laid.programme);
  if (found.status === 'infeasible') return null;
  if (found.status !== 'optimal') throw new Error(`the solver says ${found.status}`);
  return { laid, found };
}

/** What the best plan costs; what cannot be carried out costs Infinity. */
export const leastCost = (problem: PlanProblem, wholeUntil?: number): number =>
  optimumOf(problem, wholeUntil)?.found.value ?? Number.POSITIVE_INFINITY;
