/** The larder of one replicate, day by day: what arrives, dies and grows; what it holds, slice by slice. */

import { KEPT_MM } from '../larder/index.ts';
import type { Policy } from '../policy.ts';
import type { Cohort } from './cohorts.ts';
import type { Stock } from './stock.ts';

/** Sums over replicates by bin: start + arrived + hatched = eaten + died + left. */
export interface BinTotals {
  readonly start: Float64Array;
  readonly arrived: Float64Array;
  readonly hatched: Float64Array;
  readonly eaten: Float64Array;
  readonly died: Float64Array;
  readonly left: Float64Array;
  readonly outgrown: Float64Array;
}

export interface Larder {
  readonly stock: Stock;
  readonly policy: Policy;
  /** Heads and body length of each slice today. */
  readonly heads: Float64Array;
  readonly lengthMm: Float64Array;
  /** Length of each cohort's first and last slice today. */
  readonly shortestMm: Float64Array;
  readonly longestMm: Float64Array;
  /** Day on which each cohort is there in this replicate, with its delay; and heads as a multiple of the expected. */
  readonly arrivesOn: Int32Array;
  readonly factor: Float64Array;
  /** Place of each bin's growth speed among its nodes, and its hazard multiplier. */
  readonly speedPlace: Float64Array;
  readonly hazard: Float64Array;
  /** Heads of each bin as a multiple of the expected. */
  readonly countFactor: Float64Array;
  /** Day on which each bin dies off in this replicate; beyond the horizon: it does not. */
  readonly diesOffOn: Float64Array;
  readonly totals: BinTotals;
}

/** Room for one replicate's larder; the same arrays serve all replicates, totals add up over them. */
export function larderFor(stock: Stock, policy: Policy): Larder {
  const perBin = () => new Float64Array(stock.bins.length);
  return {
    stock,
    policy,
    heads: new Float64Array(stock.totalSlices),
    lengthMm: new Float64Array(stock.totalSlices),
    shortestMm: new Float64Array(stock.cohorts.length),
    longestMm: new Float64Array(stock.cohorts.length),
    arrivesOn: new Int32Array(stock.cohorts.length),
    factor: new Float64Array(stock.cohorts.length),
    speedPlace: perBin(),
    hazard: perBin(),
    countFactor: perBin(),
    diesOffOn: perBin(),
    totals: {
      start: perBin(),
      arrived: perBin(),
      hatched: perBin(),
      eaten: perBin(),
      died: perBin(),
      left: perBin(),
      outgrown: perBin(),
    },
  };
}

/** Brings every cohort to a day: arrivals come in, deaths since yesterday go, lengths are those of today. */
export function larderOnDay(larder: Larder, day: number): void {
  const { cohorts } = larder.stock;
  for (let c = 0; c < cohorts.length; c++) {
    const age = day - (larder.arrivesOn[c] as number);
    if (age < 0) continue;
    const cohort = cohorts[c] as Cohort;
    if (age === 0) arrive(larder, c, day);
    else lose(larder, cohort, { age, day });
    grow(larder, cohort, age);
    larder.shortestMm[c] = larder.lengthMm[cohort.firstSlice] as number;
    larder.longestMm[c] = larder.lengthMm[cohort.firstSlice + cohort.slices - 1] as number;
  }
}

function arrive(larder: Larder, c: number, day: number): void {
  const cohort = larder.stock.cohorts[c] as Cohort;
  const place = larder.speedPlace[cohort.bin] as number;
  const node = Math.floor(place);
  const part = place - node;
  const low = cohort.nodes[node]?.heads as number;
  const high = cohort.nodes[Math.min(node + 1, cohort.nodes.length - 1)]?.heads as number;
  const heads = (low + (high - low) * part) * (larder.factor[c] as number);
  larder.heads.fill(heads / cohort.slices, cohort.firstSlice, cohort.firstSlice + cohort.slices);
  const { totals } = larder;
  const sums =
    cohort.kind === 'delivered' && day > 0
      ? totals.arrived
      : cohort.kind === 'hatched'
        ? totals.hatched
        : totals.start;
  sums[cohort.bin] = (sums[cohort.bin] as number) + heads;
}

/** Deaths of a day: the survivors' share since yesterday to the power of the bin's hazard multiplier; and a die-off. */
function lose(larder: Larder, cohort: Cohort, { age, day }: { age: number; day: number }): void {
  const { bin } = cohort;
  const place = larder.speedPlace[bin] as number;
  const before = aliveAt(cohort, place, age - 1);
  const usual = before > 0 ? (aliveAt(cohort, place, age) / before) ** (larder.hazard[bin] as number) : 0;
  const kept = larder.diesOffOn[bin] === day ? usual * (1 - larder.policy.dieOffShare.value) : usual;
  let died = 0;
  for (let q = cohort.firstSlice; q < cohort.firstSlice + cohort.slices; q++) {
    const heads = larder.heads[q] as number;
    died += heads * (1 - kept);
    larder.heads[q] = heads * kept;
  }
  larder.totals.died[bin] = (larder.totals.died[bin] as number) + died;
}

function aliveAt(cohort: Cohort, place: number, age: number): number {
  const node = Math.floor(place);
  const low = cohort.nodes[node]?.alive[age] as number;
  const high = cohort.nodes[Math.min(node + 1, cohort.nodes.length - 1)]?.alive[age] as number;
  return low + (high - low) * (place - node);
}

/** Lengths between those of the two nearest speeds; a slice that is not to be fed at one of them follows the nearer. */
function grow(larder: Larder, cohort: Cohort, age: number): void {
  const place = larder.speedPlace[cohort.bin] as number;
  const node = Math.floor(place);
  const part = place - node;
  const low = cohort.nodes[node]?.lengthMm as Float64Array;
  const high = cohort.nodes[Math.min(node + 1, cohort.nodes.length - 1)]?.lengthMm as Float64Array;
  const offset = age * cohort.slices;
  for (let q = 0; q < cohort.slices; q++) {
    const a = low[offset + q] as number;
    const b = high[offset + q] as number;
    const split = Math.max(a, b) >= KEPT_MM || a === 0 || b === 0;
    larder.lengthMm[cohort.firstSlice + q] =
      a === b || (split && part < 1 / 2) ? a : split ? b : a + (b - a) * part;
  }
}

/** Closes a replicate: what is left alive, and how much of it, breeders apart, is longer than those who take it can. */
export function closeLarder(larder: Larder, longestMm: Float64Array): void {
  const { left, outgrown } = larder.totals;
  larder.stock.cohorts.forEach((cohort, c) => {
    if ((larder.arrivesOn[c] as number) >= larder.stock.days) return;
    for (let q = cohort.firstSlice; q < cohort.firstSlice + cohort.slices; q++) {
      const heads = larder.heads[q] as number;
      left[cohort.bin] = (left[cohort.bin] as number) + heads;
      const length = larder.lengthMm[q] as number;
      const longest = longestMm[cohort.species] as number;
      const over = longest > 0 && length > longest && length !== KEPT_MM;
      if (over) outgrown[cohort.bin] = (outgrown[cohort.bin] as number) + heads;
    }
  });
}
