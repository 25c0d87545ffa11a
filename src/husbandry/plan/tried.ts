/** Plans that were tried, what the engine says of each, and the best of several. */
import type { PlanAnswer } from './answer.ts';
import { type Bench, judgePlan, type Verdict } from './judge-plan.ts';
import type { PlanProblem } from './problem.ts';
import type { Proposal } from './proposal.ts';

/** A plan that was tried, with what the engine says of it. */
export interface Tried {
  readonly level: number;
  readonly problem: PlanProblem;
  readonly proposal: Proposal;
  readonly made: PlanAnswer['made'];
  readonly gap: number | null;
  readonly verdict: Verdict;
  /** Every target is met: in the weeks lived through day by day, and in the mean over all. */
  readonly met: boolean;
}

/** What the engine says of a proposal. */
export function judged(
  bench: Bench,
  problem: PlanProblem,
  proposal: Proposal,
): Pick<Tried, 'verdict' | 'met'> {
  const verdict = judgePlan(bench, proposal);
  return { verdict, met: verdict.met && isServed(bench, problem, proposal) };
}

/** Whether in the mean each urgency gets its share of items over all periods; those who find nothing are told elsewhere. */
function isServed({ laid }: Bench, { eaters }: PlanProblem, { flows }: Proposal): boolean {
  const targets = laid.snapshot.facts.policy.planTargets.value;
  const sum = (values: ArrayLike<number> | undefined) => Array.from(values ?? []).reduce((a, b) => a + b, 0);
  return Object.entries(targets).every(([urgency, target]) => {
    const fed = eaters
      .map((_, e) => e)
      .filter((e) => eaters[e]?.urgency === urgency && eaters[e]?.fare.length);
    const wanted = fed.reduce((all, e) => all + sum(eaters[e]?.wanted), 0);
    const missed = fed.reduce((all, e) => all + sum(flows.missed[e]), 0);
    return missed <= (1 - target) * wanted;
  });
}

/** Of those that meet every target the cheapest; where none does, the one of least cost with what is missed priced in. */
export function bestOf(tried: readonly Tried[]): Tried {
  const met = tried.filter((each) => each.met);
  const among = met.length > 0 ? met : tried;
  return among.reduce((best, each) => (each.verdict.score < best.verdict.score ? each : best));
}
