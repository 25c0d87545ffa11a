/** Plans that were tried, what the engine and the fates say of each, and the best of several. */
import type { Urgency } from '../animals/index.ts';
import type { Cents } from '../orders/index.ts';
import type { PlanAnswer } from './answer.ts';
import { type Bench, judgePlan, URGENCIES, type Verdict } from './judge-plan.ts';
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
    met: verdict.met && URGENCIES.every((urgency) => isServed(bench.laid, urgency, lived.missed)),
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

/** Whether in the mean an urgency gets its share of items over all periods; those who find nothing are told elsewhere. */
function isServed({ fine: { eaters }, snapshot }: LaidOut, urgency: Urgency, missed: Float64Array): boolean {
  const groups = eaters.length;
  const fed = [...eaters.keys()].filter((e) => eaters[e]?.urgency === urgency && eaters[e]?.fare.length);
  const wanted = fed.reduce((all, e) => all + (eaters[e]?.wanted.reduce((a, b) => a + b, 0) ?? 0), 0);
  const gone = fed.reduce((all, e) => all + overPeriods(missed, { e, groups }), 0);
  return gone <= (1 - snapshot.facts.policy.planTargets.value[urgency]) * wanted;
}

/** A plan lived through day by day over all its weeks. */
export interface Weighed extends Tried {
  readonly all: Verdict;
  /** Every target is met over all weeks; in the fates, where day by day no meal is counted that could be helped. */
  readonly metInAll: boolean;
}

/** `through`: the bench over all weeks. */
export function weighed(through: Bench, tried: Tried): Weighed {
  const all = judgePlan(through, tried.proposal);
  const counted = new Set(all.service.map(({ urgency }) => urgency));
  const metInAll =
    all.met &&
    URGENCIES.every((urgency) => counted.has(urgency) || isServed(through.laid, urgency, tried.lived.missed));
  return { ...tried, all, metInAll };
}

/** Of those that meet every target the cheapest; where none does, the one of least cost with what is missed priced in. */
export function bestOf(tried: readonly Weighed[]): Weighed {
  const met = tried.filter((each) => each.metInAll);
  const among = met.length > 0 ? met : tried;
  return among.reduce((best, each) => (each.all.score < best.all.score ? each : best));
}
