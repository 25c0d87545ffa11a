/** A problem with everything a plan of it is judged by while it is sought. */
import { costFromPeriod, settleInFates } from './fate-cost.ts';
import { roomFor } from './fate-room.ts';
import type { Bench } from './judge-plan.ts';
import { type Living, livingOf } from './living.ts';
import type { PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';
import type { Costing } from './search-plan.ts';
import { finely } from './with-ready.ts';

/** The problem as it is lived through in all its fates, and in the mean. */
export interface Solvable {
  readonly living: Living;
  readonly costing: Costing;
}

/** The problem with everything a plan of it is judged by while it is sought. */
export function solvable(
  { laid, fates }: Pick<Bench, 'laid' | 'fates'>,
  problem: PlanProblem,
  level: number,
): Solvable {
  const living = livingOf(problem);
  const fine = livingOf(finely(laid, problem, level));
  const room = roomFor(fates, fine, laid.snapshot.facts.policy.planFirstFates.value);
  const settle = (decided: Decisions) => settleInFates(room, decided);
  const costFrom = (decided: Decisions, period: number) => costFromPeriod(room, decided, period);
  return { living, costing: { problem, costOf: settle, settle, costFrom } };
}
