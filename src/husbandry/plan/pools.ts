/**
 * Stock that stands ready: for each stretch of sizes, pooled over all who live within it, the quantile of what demand
 * and supply together may fall short by until the next parcel can come. Quantiles of groups do not add; their sums do.
 */
import { normalQuantile } from '../../maths/normal.ts';
import { sortedQuantile } from '../../maths/quantile.ts';
import { dayKey, joinKeys, mix32, purposes, uniform } from '../../maths/random.ts';
import type { Policy } from '../policy.ts';
import { DAYS_PER_WEEK, LENGTH_TO_MASS } from '../units.ts';
import type { Eating } from './eaters.ts';
import type { PlanEater, PlanPool } from './problem.ts';

const FOR = purposes('supply', 'late');

export interface Pooling {
  readonly eating: readonly Eating[];
  readonly eaters: readonly PlanEater[];
  readonly policy: Policy;
  readonly seed: number;
  /** Chance that what stands ready is enough. */
  readonly level: number;
  /** Days from the last order to its parcel: what is not foreseen before then adds up. */
  readonly leadDays: number;
  readonly readyCents: readonly number[];
}

/** One pool for each group and all whose fare lies within its own; groups with the same fare share one. */
export function poolsOf(pooling: Pooling): PlanPool[] {
  if (pooling.level <= 0) return [];
  const fares = pooling.eaters.map(({ fare }) => new Set(fare.map(({ place, node }) => `${place} ${node}`)));
  const seen = new Set<string>();
  return pooling.eaters.flatMap((eater, e) => {
    const own = fares[e] as Set<string>;
    const members = pooling.eaters
      .map((_, m) => m)
      .filter(
        (m) =>
          (fares[m] as Set<string>).size > 0 && [...(fares[m] as Set<string>)].every((each) => own.has(each)),
      );
    const name = members.join(' ');
    if (own.size === 0 || seen.has(name)) return [];
    seen.add(name);
    return [
      {
        key: eater.key,
        fare: eater.fare.map(({ place, node, items }) => ({ place, node, items })),
        least: shortfalls(e, members, pooling),
        cents: Math.max(...members.map((m) => pooling.readyCents[m] as number)),
      },
    ];
  });
}

/** Quantile of demand less supply over each period, in items of the pool's own group; none below 0. */
function shortfalls(e: number, members: readonly number[], pooling: Pooling): Float64Array {
  const { eating, level, policy, leadDays, seed } = pooling;
  const own = eating[e] as Eating;
  const lead = leadDays / DAYS_PER_WEEK;
  const items = own.wanted.map(() => 0);
  return Float64Array.from(items, (_, t) => {
    const demands = members.map((m) => {
      const other = eating[m] as Eating;
      return { of: other, worth: worthOf(other, own) };
    });
    const mean = demands.reduce((sum, { of, worth }) => sum + worth * (of.wanted[t] as number), 0);
    const over = Float64Array.from(own.byReplicate[t] as Float64Array, (__, r) => {
      let sum = 0;
      for (const { of, worth } of demands) {
        sum += worth * deviation(of, t, r);
        if (t > 0) sum += Math.min(1, lead) * worth * deviation(of, t - 1, r);
      }
      return sum + mean * supplyShort({ policy, key: joinKeys(mix32(seed), r), t });
    }).sort();
    return Math.max(0, sortedQuantile(over, level));
  });
}

const deviation = ({ byReplicate, wanted }: Eating, t: number, r: number): number =>
  (byReplicate[t]?.[r] as number) - (wanted[t] as number);

/** Items of one group in items of another, by mass: the cube of the ideal lengths. */
function worthOf(other: Eating, own: Eating): number {
  const shared = [...own.group.windows.keys()].find((code) => other.group.windows.has(code));
  if (shared === undefined) return 1;
  const [a, b] = [other.group.windows.get(shared)?.idealMm, own.group.windows.get(shared)?.idealMm];
  return a && b ? (a / b) ** LENGTH_TO_MASS : 1;
}

/** Share of a period's meals by which supply falls short of its mean: unlike counts and speeds, and a parcel that is late. */
function supplyShort({ policy, key, t }: { policy: Policy; key: number; t: number }): number {
  const cv = Math.hypot(policy.overCountCv.value, policy.countCv.value, policy.speedLogSd.value / 2);
  const sd = Math.sqrt(Math.log1p(cv * cv));
  const on = dayKey(key, t);
  const factor = Math.exp(sd * normalQuantile(uniform(on, FOR.supply)) - (sd * sd) / 2);
  const late = policy.deliveryLateChance.value;
  const days = late > 0 && late < 1 ? Math.floor(Math.log(uniform(on, FOR.late)) / Math.log(late)) : 0;
  return 1 - factor + Math.min(1, days / DAYS_PER_WEEK);
}
