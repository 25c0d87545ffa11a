/**
 * The rule a careful keeper could follow: whenever something will be short before the parcel after next, buy what feeds
 * it cheapest, for so many periods ahead. Tuned over the periods ahead; needs no solver, and is what every plan must beat.
 */
import { allowedFrom } from './allowed.ts';
import { costOfPlan, flowsOf } from './lived.ts';
import type { Living } from './living.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanEater, PlanParcel, PlanProblem } from './problem.ts';
import type { Decisions, Flows } from './proposal.ts';

/** The cheapest of the rules that look 1, 2 ... `most` periods ahead. */
export function rulePlan(living: Living, most: number): Decisions {
  const all = Array.from({ length: most }, (_, i) => byRule(living, i + 1));
  const costs = all.map((decided) => costOfPlan(living, decided));
  return all[costs.indexOf(Math.min(...costs))] as Decisions;
}

interface Draft {
  readonly packs: number[][];
  readonly cups: number[];
  readonly rests: readonly number[];
}

/** The rule that looks so many periods ahead. */
function byRule(living: Living, ahead: number): Decisions {
  const { problem } = living;
  const draft: Draft = {
    packs: problem.parcels.map(({ packs }) => packs.map(({ least }) => least)),
    cups: problem.starts.map(({ least }) => least),
    rests: problem.rests.map(({ least }) => least),
  };
  for (let t = 0; t < problem.periods; t++) coverPeriod(living, draft, { t, ahead });
  return allowedFrom(problem, draft);
}

interface Covering {
  readonly t: number;
  readonly ahead: number;
}

/** Buys for the groups that would miss most, worst first, as long as it costs less than what they would miss. */
function coverPeriod(living: Living, draft: Draft, { t, ahead }: Covering): void {
  const { problem } = living;
  const tried = new Set<number>();
  while (tried.size < problem.eaters.length) {
    const flows = flowsOf(living, draft);
    const e = worst(problem, flows, { t, tried });
    if (e < 0) return;
    tried.add(e);
    const needs = missedIn(flows, e, { from: t, to: t + ahead });
    const buy = cheapest(problem, draft, { e, t, needs });
    if (!buy) continue;
    const row = draft.packs[buy.parcel] as number[];
    row[buy.pack] = (row[buy.pack] as number) + buy.count;
  }
}

const missedIn = ({ missed, late }: Flows, e: number, { from, to }: { from: number; to: number }): number => {
  const weeks = (missed[e] as Float64Array).subarray(from, to);
  return (
    weeks.reduce((a, b) => a + b, 0) + ((late[e] as Float64Array)[Math.min(to, weeks.length + from) - 1] ?? 0)
  );
};

/** The group that misses most in a period, in money; -1 where nobody misses anything. */
function worst(
  { eaters }: PlanProblem,
  { missed }: Flows,
  { t, tried }: { t: number; tried: ReadonlySet<number> },
): number {
  let found = -1;
  let most = 0;
  eaters.forEach(({ missedCents }, e) => {
    const cents = missedCents * (missed[e]?.[t] ?? 0);
    if (cents <= most || tried.has(e)) return;
    most = cents;
    found = e;
  });
  return found;
}

interface Buy {
  readonly parcel: number;
  readonly pack: number;
  readonly count: number;
}

interface Buying {
  readonly e: number;
  readonly t: number;
  readonly needs: number;
}

/** What feeds a group in a period at least cost; null where nothing does for less than it would miss. */
function cheapest(problem: PlanProblem, draft: Draft, { e, t, needs }: Buying): Buy | null {
  const eater = problem.eaters[e] as PlanEater;
  let best: Buy | null = null;
  let least = eater.missedCents * needs;
  problem.parcels.forEach((parcel, i) => {
    if (parcel.period !== t) return;
    const row = draft.packs[i] as number[];
    const before = parcelCost(parcel, row);
    parcel.packs.forEach((pack, j) => {
      const items = eater.fare.reduce(
        (sum, fare) =>
          fare.place === pack.place ? sum + fare.items * (pack.brings[fare.node] as number) : sum,
        0,
      );
      const room = Math.floor(pack.most) - (row[j] as number);
      const count = items > 0 ? Math.min(room, Math.ceil(needs / items)) : 0;
      if (count < 1) return;
      const filled = row.map((n, at) => (at === j ? n + count : n));
      const after = parcelCost(parcel, filled);
      const cents = costOf(after) - costOf(before);
      const given = Math.min(needs, count * items);
      const perNeed = (cents * needs) / given;
      if (perNeed >= least || overBudget(problem, draft, { i, packs: filled })) return;
      least = perNeed;
      best = { parcel: i, pack: j, count };
    });
  });
  return best;
}

const costOf = ({ goods, postage, labour }: ReturnType<typeof parcelCost>): number =>
  goods + postage + labour;

/** Whether a parcel of these packs would pass what may be spent in the week in which it is paid. */
function overBudget(
  { parcels, budget }: PlanProblem,
  draft: Draft,
  { i, packs }: { i: number; packs: readonly number[] },
): boolean {
  const { paid } = parcels[i] as PlanParcel;
  const most = budget[paid] ?? Number.POSITIVE_INFINITY;
  if (!Number.isFinite(most)) return false;
  const spent = parcels.reduce((sum, parcel, at) => {
    if (parcel.paid !== paid) return sum;
    const { goods, postage } = parcelCost(parcel, at === i ? packs : (draft.packs[at] ?? []));
    return sum + goods + postage;
  }, 0);
  return spent > most;
}
