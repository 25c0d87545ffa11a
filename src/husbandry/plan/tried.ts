/** Plans that were tried, what the engine says of each, and the best of several. */
import type { Cents } from '../orders/index.ts';
import type { PlanAnswer } from './answer.ts';
import { type Bench, judgePlan, type Verdict } from './judge-plan.ts';
import type { LaidOut } from './lay-out.ts';
import { type LivedInFates, livedInFates, overPeriods } from './lived-in-fates.ts';
import type { PlanProblem } from './problem.ts';
import type { Proposal } from './proposal.ts';
import { finely } from './with-ready.ts';

/** A plan that was tried, with what the engine says of it. */
export interface Tried {
  readonly level: number;
  readonly problem: PlanProblem;
  readonly proposal: Proposal;
  readonly made: PlanAnswer['made'];
  readonly gap: number | null;
  readonly verdict: Verdict;
  readonly lived: LivedInFates;
  /** Money, and what is missed priced: in the weeks lived through day by day as the engine finds it, later as the fates do. */
  readonly score: Cents;
  /** Every target is met: in the weeks lived through day by day, and in the mean over all. */
  readonly met: boolean;
}

/** What the engine says of a proposal, and the fates of its later weeks. */
export function judged(
  bench: Bench,
  { level, problem, proposal }: Pick<Tried, 'level' | 'problem' | 'proposal'>,
): Pick<Tried, 'verdict' | 'met' | 'lived' | 'score'> {
  const verdict = judgePlan(bench, proposal);
  const lived = livedInFates(bench, finely(bench.laid, problem, level), proposal);
  return {
    verdict,
    lived,
    score: verdict.score + laterCents(bench, lived),
    met: verdict.met && isServed(bench.laid, lived.missed),
  };
}

/** Price of what is missed in the fates after the weeks lived through day by day; the same whatever chance was asked for. */
function laterCents({ laid, days }: Bench, { missed }: LivedInFates): Cents {
  const { eaters } = laid.fine;
  const held = laid.snapshot.today + days;
  const first = laid.periods.findIndex(({ from }) => from >= held);
  if (first < 0) return 0;
  return missed
    .subarray(first * eaters.length)
    .reduce((sum, items, k) => sum + items * (eaters[k % eaters.length]?.missedCents ?? 0), 0);
}

/** Whether in the mean each urgency gets its share of items over all periods; those who find nothing are told elsewhere. */
function isServed({ fine: { eaters }, snapshot }: LaidOut, missed: Float64Array): boolean {
  return Object.entries(snapshot.facts.policy.planTargets.value).every(([urgency, target]) => {
    const fed = [...eaters.keys()].filter((e) => eaters[e]?.urgency === urgency && eaters[e]?.fare.length);
    const wanted = fed.reduce((all, e) => all + (eaters[e]?.wanted.reduce((a, b) => a + b, 0) ?? 0), 0);
    const groups = eaters.length;
    return fed.reduce((all, e) => all + overPeriods(missed, { e, groups }), 0) <= (1 - target) * wanted;
  });
}

/** Of those that meet every target the cheapest; where none does, the one of least cost with what is missed priced in. */
export function bestOf(tried: readonly Tried[]): Tried {
  const met = tried.filter((each) => each.met);
  const among = met.length > 0 ? met : tried;
  return among.reduce((best, each) => (each.score < best.score ? each : best));
}
