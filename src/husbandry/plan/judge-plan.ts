/** A plan judged: the daily engine lives it through, on the same draws for every plan of a room. */
import { type Estimate, estimate } from '../../maths/estimate.ts';
import type { Urgency } from '../animals/index.ts';
import { rosterOf } from '../appetite/index.ts';
import type { Cents } from '../orders/index.ts';
import { type Judged, judge, type Kept } from '../supply/index.ts';
import type { Service } from './answer.ts';
import { binsLaid } from './bins-laid.ts';
import { type Made, withPlan } from './deliver.ts';
import { type Fates, fatesOf } from './fates.ts';
import type { LaidOut } from './lay-out.ts';
import { decisionsCost } from './parcel-cost.ts';
import type { Decisions } from './proposal.ts';
import type { Effort } from './question.ts';

/** What judging keeps between plans of one room. */
export interface Bench {
  readonly laid: LaidOut;
  /** What plans are lived through in while they are sought. */
  readonly fates: Fates;
  readonly made: Made;
  readonly kept: Kept;
  readonly days: number;
  readonly replicates: number;
  /** What is missed before anything decided now can help, by group. */
  readonly before: Missing | null;
}

interface Missing {
  /** Days until something decided now can help. */
  readonly days: number;
  readonly due: Float64Array;
  readonly missed: Float64Array;
}

export interface Verdict {
  readonly judged: Judged;
  readonly service: readonly Service[];
  readonly met: boolean;
  readonly missedMeals: Estimate;
  readonly dangers: Estimate;
  /** Money, and what is missed priced as in the programme. */
  readonly score: Cents;
  readonly cents: Cents;
}

/** Opens the bench: how long, how often, and what is past helping. */
export function benchFor(laid: LaidOut, effort: Effort): Bench {
  const { snapshot } = laid;
  const { policy } = snapshot.facts;
  const days = daysOf(laid.periods.slice(0, policy.planHeldWeeks.value));
  const replicates = effort === 'quick' ? policy.planJudgeLeast.value : replicatesFor(laid, days);
  const made: Made = new Map();
  const kept: Kept = { roster: rosterOf(snapshot, policy.moultsAhead.value), laid: binsLaid(laid) };
  const fates = fatesOf(laid, laid.problem);
  const reach = firstReach(laid);
  if (reach <= 0) return { laid, fates, made, kept, days, replicates, before: null };
  const early = judge(snapshot, {
    days: reach,
    replicates,
    notesStock: false,
    kept: { ...kept, laid: binsLaid(laid) },
  });
  return {
    laid,
    fates,
    made,
    kept,
    days,
    replicates,
    before: { days: reach, due: early.tally.due, missed: early.tally.missed },
  };
}

const daysOf = (periods: LaidOut['periods']): number => periods.reduce((sum, { days }) => sum + days, 0);

/** The same bench over all weeks of the plan: what plans are chosen and told by, too slow to weigh every line by. */
export function throughAll(bench: Bench): Bench {
  const { laid, kept } = bench;
  const days = daysOf(laid.periods);
  return days === bench.days ? bench : { ...bench, days, kept: { ...kept, laid: binsLaid(laid) } };
}

function replicatesFor({ snapshot }: LaidOut, days: number): number {
  const { planJudgeReplicates, planJudgeLeast, planJudgeWork } = snapshot.facts.policy;
  const affordable = planJudgeWork.value / (Math.max(1, snapshot.animals.length) * days);
  return Math.round(Math.min(planJudgeReplicates.value, Math.max(planJudgeLeast.value, affordable)));
}

/** Days until the first parcel that can still be ordered is here; a shop's count. */
function firstReach({ parcels, snapshot }: LaidOut): number {
  const first = parcels.reduce((least, { comes }) => Math.min(least, comes), Number.POSITIVE_INFINITY);
  return Number.isFinite(first) ? first - snapshot.today : 0;
}

/** Lives a plan through. */
export function judgePlan(bench: Bench, decided: Decisions): Verdict {
  const { laid, made, days, replicates } = bench;
  const snapshot = withPlan(laid, decided, made);
  const judged = judge(snapshot, {
    days,
    replicates,
    notesStock: false,
    kept: bench.kept,
  });
  const service = serviceOf(bench, judged);
  const cents = decisionsCost(laid.problem, decided);
  const dangers = estimate(judged.tally.dangersOf);
  const dangerCents = dangers.mean * laid.usualCents * laid.snapshot.facts.policy.planDangerTimes.value;
  return {
    judged,
    service,
    met: service.every(({ met }) => met),
    missedMeals: estimate(judged.tally.missedOf),
    dangers,
    cents,
    score: cents + missedCents(bench, judged) + dangerCents,
  };
}

export const URGENCIES: readonly Urgency[] = ['fragile', 'ordinary', 'robust'];

/** By urgency, the share of meals not missed from the first day that can be helped, of all where none can be; urgencies nobody has are left out. */
function serviceOf({ laid, before: early, days, replicates }: Bench, { tally, menu }: Judged): Service[] {
  const before = early && early.days < days ? early : null;
  const targets = laid.snapshot.facts.policy.planTargets.value;
  return URGENCIES.flatMap((urgency): Service[] => {
    const groups = menu.groups.map((_, g) => g).filter((g) => menu.groups[g]?.rule.urgency === urgency);
    const sum = (values: ArrayLike<number>) =>
      groups.reduce((all, g) => all + (values[g] ?? 0), 0) / replicates;
    const due = sum(tally.due) - (before ? sum(before.due) : 0);
    if (due <= 0) return [];
    const gone = before ? sum(before.missed) : 0;
    const shares = Float64Array.from({ length: replicates }, (_, r) => {
      const missed = groups.reduce((all, g) => all + (tally.missedIn[r * tally.groups + g] as number), 0);
      return Math.max(0, 1 - (missed - gone) / due);
    });
    const notMissed = estimate(shares);
    const target = targets[urgency];
    return [{ urgency, mealsDue: due, notMissed, target, met: notMissed.mean >= target }];
  });
}

/** Price of what is missed, in the programme's own prices. */
function missedCents({ laid, replicates }: Bench, { tally, menu }: Judged): Cents {
  const { policy } = laid.snapshot.facts;
  return menu.groups.reduce((sum, group, g) => {
    const missed = (tally.missed[g] as number) / replicates;
    if (missed <= 0) return sum;
    const meal = laid.mealCents.get(group.key) ?? laid.usualCents;
    return sum + missed * meal * policy.planMissedTimes.value[group.rule.urgency];
  }, 0);
}
