/** What a supplier's boxes teach of how it sends: the share that dies, the share sent over, and how late it comes. */
import { betaQuantile } from '../../maths/beta.ts';
import { gammaQuantile } from '../../maths/gamma.ts';
import { normalQuantile } from '../../maths/normal.ts';
import { BAND } from '../../maths/quantile.ts';
import type { Sender } from '../larder/index.ts';
import type { Policy } from '../policy.ts';
import type { Arrival, Supplier } from './market.ts';

/** A number learned, its 90 % interval, and the boxes it was learned from. */
export interface LearnedShare {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly boxes: number;
}

export interface SenderRecord {
  readonly loss: LearnedShare;
  readonly overCount: LearnedShare;
  /** Chance a day that a parcel on its way is a further day late. */
  readonly late: LearnedShare;
}

/**
 * The record of one supplier, a box an entry. Each part has the law by which the daily engine draws it
 * (`supply/draws.ts`), with the method's number as what is believed of a supplier nobody knows.
 */
export const senderOf = (arrivals: readonly Arrival[], policy: Policy): SenderRecord => ({
  loss: lossOf(arrivals, policy),
  overCount: overCountOf(arrivals, policy),
  late: latenessOf(arrivals, policy),
});

/** The record of one among the boxes of all. */
export const recordOf = (
  { code }: Pick<Supplier, 'code'>,
  arrivals: readonly Arrival[],
  policy: Policy,
): SenderRecord =>
  senderOf(
    arrivals.filter(({ supplier }) => supplier === code),
    policy,
  );

/** For the engine: the keeper's own word where there is one, else what the record says. */
export const asSender = (
  { lossShare, overCountShare }: Pick<Supplier, 'lossShare' | 'overCountShare'>,
  { loss, overCount, late }: SenderRecord,
): Sender => ({
  lossShare: lossShare ?? loss.mean,
  overCountShare: overCountShare ?? overCount.mean,
  lateChance: late.mean,
});

/**
 * Dead share d of a box: exponential about the supplier's mean L. Heads of one box die together, so that a box is one
 * observation however many are in it. With rate 1/L ~ gamma(w + 1, w L0): after n boxes gamma(w + 1 + n, w L0 + sum d),
 * so that E[L] = (w L0 + sum d) / (w + n), where L0 is the method's share and w its weight in boxes.
 */
function lossOf(arrivals: readonly Arrival[], { deadOnArrivalShare, lossPriorBoxes }: Policy): LearnedShare {
  const shares = arrivals.flatMap(({ alive, dead }) => (alive + dead > 0 ? [dead / (alive + dead)] : []));
  const weight = lossPriorBoxes.value;
  const sum = weight * deadOnArrivalShare.value + shares.reduce((a, b) => a + b, 0);
  const shape = weight + 1 + shares.length;
  const at = (p: number): number => Math.min(1, sum / gammaQuantile(1 - p, shape));
  return learned(Math.min(1, sum / (shape - 1)), at, shares.length);
}

/**
 * y = ln(heads that came / heads ordered) of a counted box ~ N(m, s^2), s^2 = ln(1 + cv^2), m ~ N(m0, s^2): sellers
 * differ as much as boxes of one do. m | n boxes ~ N((m0 + sum y) / (1 + n), s^2 / (1 + n)); share = e^(m + s^2/2) - 1.
 */
function overCountOf(arrivals: readonly Arrival[], { overCountShare, overCountCv }: Policy): LearnedShare {
  const logs = arrivals.flatMap(({ ordered, alive, dead, counted }) =>
    counted && ordered > 0 && alive + dead > 0 ? [Math.log((alive + dead) / ordered)] : [],
  );
  const variance = Math.log1p(overCountCv.value ** 2);
  const prior = Math.log1p(overCountShare.value) - variance / 2;
  const n = 1 + logs.length;
  const mean = (prior + logs.reduce((a, b) => a + b, 0)) / n;
  const shareAt = (log: number): number => Math.expm1(log + variance / 2);
  const at = (p: number): number => shareAt(mean + normalQuantile(p) * Math.sqrt(variance / n));
  return learned(shareAt(mean), at, logs.length);
}

/**
 * Days late are geometric: P(l) = (1 - q) q^l. With q ~ beta(w q0, w (1 - q0)), n boxes late by sum l days in all
 * leave beta(w q0 + sum l, w (1 - q0) + n). A box before its day counts as on its day.
 */
function latenessOf(
  arrivals: readonly Arrival[],
  { deliveryLateChance, latePriorDays }: Policy,
): LearnedShare {
  const daysLate = arrivals.reduce((sum, { due, came }) => sum + Math.max(0, came - due), 0);
  const a = latePriorDays.value * deliveryLateChance.value + daysLate;
  const b = latePriorDays.value * (1 - deliveryLateChance.value) + arrivals.length;
  const at = (p: number): number => (a > 0 && b > 0 ? betaQuantile(p, a, b) : Number(b <= 0));
  return learned(a / (a + b), at, arrivals.length);
}

const learned = (mean: number, at: (p: number) => number, boxes: number): LearnedShare => ({
  mean,
  low: at(BAND.low),
  high: at(BAND.high),
  boxes,
});
