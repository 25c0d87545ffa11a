/** What a plan comes to: money, service, waste, the keeper's time. */
import { MINUTES_PER_HOUR } from '../units.ts';
import type { PlanLine, Whole } from './answer.ts';
import type { Bench } from './judge-plan.ts';
import { parcelCost } from './parcel-cost.ts';
import type { Weighed } from './tried.ts';

export function wholeOf(
  { laid, days, replicates }: Bench,
  { proposal, problem, all: verdict }: Weighed,
  lines: readonly PlanLine[],
): Whole {
  const costs = problem.parcels.map((parcel, i) => parcelCost(parcel, proposal.packs[i] ?? []));
  const goods = costs.reduce((sum, cost) => sum + cost.goods, 0) + startsCost(lines);
  const postage = costs.reduce((sum, cost) => sum + cost.postage, 0);
  const keeping = problem.places.reduce(
    (sum, { keepCents }, p) =>
      sum +
      keepCents *
        (proposal.flows.left[p] ?? []).reduce((all, heads) => all + heads.reduce((a, b) => a + b, 0), 0),
    0,
  );
  const minutes = minutesOf(lines);
  const labour = (minutes / MINUTES_PER_HOUR) * (laid.snapshot.market?.purse.hourCents ?? 0);
  const { totals } = verdict.judged.larder;
  const mean = (sums: Float64Array) => sums.reduce((a, b) => a + b, 0) / replicates;
  return {
    cents: {
      goods: Math.round(goods),
      postage: Math.round(postage),
      keeping: Math.round(keeping),
      labour: Math.round(labour),
      total: Math.round(goods) + Math.round(postage) + Math.round(keeping) + Math.round(labour),
    },
    service: verdict.service,
    missedMeals: verdict.missedMeals,
    dangers: verdict.dangers,
    heldDays: days,
    bought: lines.reduce(
      (sum, line) =>
        sum + (line.what === 'order' && line.comes < laid.snapshot.today + days ? line.heads : 0),
      0,
    ),
    eaten: mean(totals.eaten),
    died: mean(totals.died),
    outgrown: mean(totals.outgrown),
    minutes,
  };
}

const startsCost = (lines: readonly PlanLine[]): number =>
  lines.reduce((sum, line) => sum + (line.what === 'start' ? line.cents : 0), 0);

/** Lines of one parcel take the time of one. */
function minutesOf(lines: readonly PlanLine[]): number {
  const parcels = new Set<string>();
  return lines.reduce((sum, line) => {
    if (line.what !== 'order') return sum + line.minutes;
    if (parcels.has(line.parcel)) return sum;
    parcels.add(line.parcel);
    return sum + line.minutes;
  }, 0);
}
