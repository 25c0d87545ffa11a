/** A plan judged: the daily engine lives it through, on the same draws for every plan of a room. */
import { type Estimate, estimate } from '../../maths/estimate.ts';
import type { Urgency } from '../animals/index.ts';
import type { Cents } from '../orders/index.ts';
import { type Judged, judge, type Kept, nothingLaid } from '../supply/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Service } from './answer.ts';
import { type Made, withPlan } from './deliver.ts';
import type { LaidOut } from './lay-out.ts';
import { decisionsCost } from './parcel-cost.ts';
import type { Decisions } from './proposal.ts';

/** What judging keeps between plans of one room. */
export interface Bench {
  readonly laid: LaidOut;
  readonly made: Made;
  readonly kept: Kept | null;
  readonly days: number;
  readonly replicates: number;
  /** What is missed before anything decided now can help, by group. */
  readonly before: Missing | null;
}

interface Missing {
  readonly due: Float64Array;
  readonly missed: Float64Array;
}

export interface Verdict {
  readonly judged: Judged;
  readonly service: readonly Service[];
  readonly met: boolean;
  readonly missedMeals: Estimate;
  readonly dangers: Estimate;
  /** Money, and what is missed priced as in the programme: what plans are compared by. */
  readonly score: Cents;
  readonly cents: Cents;
}

/** Opens the bench: how long, how often, and what is past helping. */
export function benchFor(laid: LaidOut): Bench {
  const { policy } = laid.snapshot.facts;
  const all = laid.periods.reduce((sum, { days }) => sum + days, 0);
  const days = Math.min(all, policy.planHeldWeeks.value * DAYS_PER_WEEK);
  const animals = Math.max(1, laid.snapshot.animals.length);
  const replicates = Math.round(
    Math.min(
      policy.planJudgeReplicates.value,
      Math.max(policy.planJudgeLeast.value, policy.planJudgeWork.value / (animals * days)),
    ),
  );
  const made: Made = new Map();
  const open: Bench = { laid, made, kept: null, days, replicates, before: null };
  const reach = firstReach(laid);
  const nothing: Decisions = { packs: [], cups: [] };
  const whole = judge(withPlan(laid, nothing, made), { days, replicates, notesStock: false });
  const kept: Kept = { roster: whole.roster, laid: nothingLaid() };
  if (reach <= 0) return { ...open, kept };
  const early = judge(withPlan(laid, nothing, made), { days: reach, replicates, notesStock: false });
  return { ...open, kept, before: { due: early.tally.due, missed: early.tally.missed } };
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
    ...(bench.kept ? { kept: bench.kept } : {}),
  });
  const service = serviceOf(bench, judged);
  const cents = decisionsCost(laid.problem, decided);
  return {
    judged,
    service,
    met: service.every(({ met }) => met),
    missedMeals: estimate(judged.tally.missedOf),
    dangers: estimate(judged.tally.dangersOf),
    cents,
    score: cents + missedCents(bench, judged) - leftCents(bench, judged),
  };
}

const URGENCIES: readonly Urgency[] = ['fragile', 'ordinary', 'robust'];

/** By urgency, the share of meals not missed from the first day that can be helped; urgencies nobody has are left out. */
function serviceOf({ laid, before, replicates }: Bench, { tally, menu }: Judged): Service[] {
  const targets = laid.snapshot.facts.policy.planTargets.value;
  return URGENCIES.flatMap((urgency): Service[] => {
    const groups = menu.groups.map((_, g) => g).filter((g) => menu.groups[g]?.rule.urgency === urgency);
    const sum = (values: ArrayLike<number>) =>
      groups.reduce((all, g) => all + (values[g] ?? 0), 0) / replicates;
    const due = sum(tally.due) - (before ? sum(before.due) : 0);
    if (due <= 0) return [];
    const early = before ? sum(before.missed) : 0;
    const shares = Float64Array.from({ length: replicates }, (_, r) => {
      const missed = groups.reduce((all, g) => all + (tally.missedIn[r * tally.groups + g] as number), 0);
      return 1 - (missed - early) / due;
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
    const [few, many] = group.rule.mealItems.value;
    const cents = itemCentsOf(laid, group.key) * ((few + many) / 2);
    return sum + missed * cents * policy.planMissedTimes.value[group.rule.urgency];
  }, 0);
}

function itemCentsOf({ eating, itemCents }: LaidOut, key: string): Cents {
  const found = eating.findIndex(({ members }) => members.some(({ eating: each }) => each.group.key === key));
  return itemCents[found] ?? 0;
}

/** What is left and can still be eaten, priced below what it would cost; no more of it than will be wanted. */
function leftCents({ laid, replicates }: Bench, { larder, stock }: Judged): Cents {
  const { policy } = laid.snapshot.facts;
  const usual = [...laid.itemCents].sort((a, b) => a - b)[Math.floor(laid.itemCents.length / 2)] ?? 0;
  const heads = stock.bins.reduce((sum, { bin }, b) => {
    if (bin.role === 'colony') return sum;
    return sum + ((larder.totals.left[b] as number) - (larder.totals.outgrown[b] as number)) / replicates;
  }, 0);
  const wanted = laid.eating.reduce((sum, { wanted: items }) => sum + (items[items.length - 1] ?? 0), 0);
  return Math.min(heads, wanted * policy.planEndWeeks.value) * usual * policy.planEndShare.value;
}
