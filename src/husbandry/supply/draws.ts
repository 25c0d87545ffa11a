/** What is not known about each bin and delivery, drawn anew for each replicate. */
import { normalQuantile } from '../../maths/normal.ts';
import { joinKeys, purposes, uniform } from '../../maths/random.ts';
import type { Cohort } from './cohorts.ts';
import type { Larder } from './larder.ts';

const FOR = purposes('count', 'speed', 'hazard', 'late', 'loss', 'over', 'dieOff');

/** Rank of a bin's count in a replicate, 0 to 1: how many heads it turns out to hold. */
export const countRank = (replicateKey: number, binKey: number): number =>
  uniform(joinKeys(replicateKey, binKey), FOR.count);

/** Draws what is not known about each bin and delivery; `warmth` is the rooms' deviation, degrees C. */
export function startLarder(larder: Larder, replicateKey: number, warmth: number): void {
  const { stock, policy } = larder;
  larder.heads.fill(0);
  stock.bins.forEach((bin, b) => {
    const key = joinKeys(replicateKey, bin.key);
    const log =
      policy.speedLogSd.value * normalQuantile(uniform(key, FOR.speed)) + warmth * bin.speedPerDegree;
    larder.speedPlace[b] = placeOf(stock.speedLogs, log);
    const rank = Math.floor(uniform(key, FOR.hazard) * larder.hazards.length);
    larder.hazard[b] = larder.hazards[rank] as number;
    larder.diesOffOn[b] =
      bin.bin.role === 'frozen'
        ? Number.POSITIVE_INFINITY
        : waitFor(policy.dieOffPerDay.value, uniform(key, FOR.dieOff));
  });
  stock.cohorts.forEach((cohort, c) => {
    larder.arrivesOn[c] =
      cohort.kind === 'delivered' ? deliveryDay(larder, cohort, replicateKey) : cohort.arrives;
    larder.factor[c] = countFactor(larder, cohort, replicateKey);
  });
}

/** Day of a rare event with a fixed chance a day, from tomorrow on: 1 + floor(ln u / ln(1 - p)). */
const waitFor = (perDay: number, u: number): number =>
  perDay > 0 ? 1 + Math.floor(Math.log(u) / Math.log1p(-perDay)) : Number.POSITIVE_INFINITY;

/** Fractional index among equally spaced nodes, held within them. */
function placeOf(nodes: Float64Array, log: number): number {
  const last = nodes.length - 1;
  if (last === 0) return 0;
  const first = nodes[0] as number;
  const step = ((nodes[last] as number) - first) / last;
  return step > 0 ? Math.min(last, Math.max(0, (log - first) / step)) : 0;
}

/** The parcel is a further day late with a fixed chance each day: the delay is geometric. */
function deliveryDay(larder: Larder, cohort: Cohort, replicateKey: number): number {
  const chance = larder.policy.deliveryLateChance.value;
  if (chance <= 0) return cohort.arrives;
  const u = uniform(joinKeys(replicateKey, cohort.key), FOR.late);
  return cohort.arrives + Math.floor(Math.log(u) / Math.log(chance));
}

/** Log-normal doubt of a count, mean 1; for a delivery the seller's over-count less what is dead on arrival. */
function countFactor(larder: Larder, cohort: Cohort, replicateKey: number): number {
  const { policy, stock } = larder;
  const key = joinKeys(replicateKey, cohort.key);
  const z = normalQuantile(uniform(key, cohort.kind === 'delivered' ? FOR.over : FOR.count));
  if (cohort.kind !== 'delivered') {
    const sd = stock.bins[cohort.bin]?.countLogSd as number;
    return Math.exp(sd * z - (sd * sd) / 2);
  }
  const sd = Math.sqrt(Math.log1p(policy.overCountCv.value ** 2));
  const dead = Math.min(1, -Math.log(uniform(key, FOR.loss)) * policy.deadOnArrivalShare.value);
  return (1 + policy.overCountShare.value) * Math.exp(sd * z - (sd * sd) / 2) * (1 - dead);
}
