/** What is not known about each bin and delivery, drawn anew for each replicate. */
import { normalQuantile } from '../../maths/normal.ts';
import { joinKeys, purposes, uniform, whole } from '../../maths/random.ts';
import type { Cohort } from './cohorts.ts';
import type { Larder } from './larder.ts';
import type { StockBin } from './stock-bin.ts';

const FOR = purposes('count', 'speed', 'hazard', 'late', 'loss', 'over', 'dieOff');

/** What is drawn of a bin: its own growth speed, given it a hazard, given both its count. */
interface Drawn {
  /** Log of its own growth speed. */
  readonly speedLog: number;
  readonly hazard: number;
  /** Heads as a multiple of the expected. */
  readonly countFactor: number;
}

/** One bin in one replicate. */
export function drawBin({ belief: { ranks }, key: binKey }: StockBin, replicateKey: number): Drawn {
  const key = joinKeys(replicateKey, binKey);
  const n = ranks.speedLogs.length;
  const speedLog = ranks.speedLogs[whole(key, FOR.speed, n)] as number;
  const at = Math.round(placeOf(ranks.atLogs, speedLog)) * n + whole(key, FOR.hazard, n);
  const sd = ranks.countLogSds[at] as number;
  const z = normalQuantile(uniform(key, FOR.count));
  return {
    speedLog,
    hazard: ranks.hazards[at] as number,
    countFactor: (ranks.countRatios[at] as number) * Math.exp(sd * z - (sd * sd) / 2),
  };
}

/** Draws what is not known about each bin and delivery; `warmth` is the rooms' deviation, degrees C. */
export function startLarder(larder: Larder, replicateKey: number, warmth: number): void {
  const { stock, policy } = larder;
  larder.heads.fill(0);
  stock.bins.forEach((bin, b) => {
    const drawn = drawBin(bin, replicateKey);
    larder.speedPlace[b] = placeOf(bin.speedLogs, drawn.speedLog + warmth * bin.speedPerDegree);
    larder.hazard[b] = drawn.hazard;
    larder.countFactor[b] = drawn.countFactor;
    larder.diesOffOn[b] =
      bin.bin.role === 'frozen'
        ? Number.POSITIVE_INFINITY
        : waitFor(policy.dieOffPerDay.value, uniform(joinKeys(replicateKey, bin.key), FOR.dieOff));
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

/** The parcel is a further day late with a fixed chance each day: the delay is geometric, here to the run's end. */
function deliveryDay(larder: Larder, cohort: Cohort, replicateKey: number): number {
  const chance = cohort.sender?.lateChance ?? larder.policy.deliveryLateChance.value;
  if (chance <= 0) return cohort.arrives;
  const { days } = larder.stock;
  if (chance >= 1) return days;
  const u = uniform(joinKeys(replicateKey, cohort.key), FOR.late);
  return Math.min(days, cohort.arrives + Math.floor(Math.log(u) / Math.log(chance)));
}

/** The bin's own; for a delivery the seller's over-count, log-normal, less what is dead on arrival. */
function countFactor(larder: Larder, cohort: Cohort, replicateKey: number): number {
  if (cohort.kind !== 'delivered') return larder.countFactor[cohort.bin] as number;
  const { policy } = larder;
  const key = joinKeys(replicateKey, cohort.key);
  const z = normalQuantile(uniform(key, FOR.over));
  const sd = Math.sqrt(Math.log1p(policy.overCountCv.value ** 2));
  const { lossShare = policy.deadOnArrivalShare.value, overCountShare = policy.overCountShare.value } =
    cohort.sender ?? {};
  const dead = Math.min(1, -Math.log(uniform(key, FOR.loss)) * lossShare);
  return (1 + overCountShare) * Math.exp(sd * z - (sd * sd) / 2) * (1 - dead);
}
