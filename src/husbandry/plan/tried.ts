/** Plans that were tried, what the engine and the fates say of each, and the best of several. */
import type { Urgency } from '../animals/index.ts';
import type { Cents } from '../orders/index.ts';
import type { PlanAnswer } from './answer.ts';
import { type Bench, judgePlan, URGENCIES, type Verdict } from './judge-plan.ts';
import { type LivedInFates, livedInFates } from './lived-in-fates.ts';
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
  /** Money, and what is missed priced: in the weeks lived through day by day as the engine finds it, later as the fates do; less what the end is worth. */
  readonly score: Cents;
  /** Urgencies whose target is missed in the weeks lived through day by day, or in the fates over all. */
  readonly unserved: number;
}

/** What the engine says of a proposal, and the fates of its later weeks. */
export function judged(
  bench: Bench,
  { level, problem, proposal }: Pick<Tried, 'level' | 'problem' | 'proposal'>,
): Pick<Tried, 'verdict' | 'unserved' | 'lived' | 'score'> {
  const verdict = judgePlan(bench, proposal);
  const lived = livedInFates(bench, finely(bench.laid, problem, level), proposal);
  return {
    verdict,
    lived,
    score: verdict.score + laterCents(bench, lived) - endCents(lived),
    unserved: URGENCIES.filter((urgency) => !isServed(bench, lived, urgency) || isMissed(verdict, urgency))
      .length,
  };
}

const endCents = ({ endCents: [cents] }: LivedInFates): Cents => cents as number;

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

const isMissed = ({ service }: Verdict, urgency: Urgency): boolean =>
  service.some((each) => each.urgency === urgency && !each.met);

/**
 * Whether in the mean of the fates an urgency gets its share of items from the first day that can be helped; those who
 * find nothing are told elsewhere.
 */
function isServed({ laid, before }: Bench, { wanted, missed }: LivedInFates, urgency: Urgency): boolean {
  const { fine, periods, snapshot } = laid;
  const groups = fine.eaters.length;
  const helped = snapshot.today + (before?.days ?? 0);
  const from = groups * periods.filter((period) => period.from < helped).length;
  const sum = (byMoment: Float64Array) =>
    byMoment.subarray(from).reduce((all, items, k) => {
      const eater = fine.eaters[k % groups];
      return eater?.urgency === urgency && eater.fare.length > 0 ? all + items : all;
    }, 0);
  return sum(missed) <= (1 - snapshot.facts.policy.planTargets.value[urgency]) * sum(wanted);
}

/** A plan lived through day by day over all its weeks. */
export interface Weighed extends Tried {
  readonly all: Verdict;
  /** Every target is met over all weeks; in the fates, where day by day no meal is counted that could be helped. */
  readonly metInAll: boolean;
}

export interface Benches {
  readonly bench: Bench;
  /** The same over all weeks. */
  readonly through: Bench;
}

export function weighed({ bench, through }: Benches, tried: Tried): Weighed {
  const all = through === bench ? tried.verdict : judgePlan(through, tried.proposal);
  const counted = new Set(all.service.map(({ urgency }) => urgency));
  const metInAll =
    all.met && URGENCIES.every((urgency) => counted.has(urgency) || isServed(through, tried.lived, urgency));
  return { ...tried, all, metInAll };
}

/** Of those that meet every target the cheapest; where none does, the one of least cost with what is missed priced in. */
export function bestOf(tried: readonly Weighed[]): Weighed {
  const met = tried.filter((each) => each.metInAll);
  const among = met.length > 0 ? met : tried;
  const scoreOf = ({ all, lived }: Weighed): Cents => all.score - endCents(lived);
  return among.reduce((best, each) => (scoreOf(each) < scoreOf(best) ? each : best));
}
