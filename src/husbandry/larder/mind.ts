/** What is thought of a bin while its events are gone through: heads in every cell, sizes at every growth speed. */

import { coarsened, type Grid, gammaGrid, normalGrids, normalised } from '../../maths/belief-grid.ts';
import { mixtureQuantiles } from '../../maths/log-normal.ts';
import { BAND } from '../../maths/quantile.ts';
import type { DayNumber } from '../calendar.ts';
import type { Policy } from '../policy.ts';
import type { BinEvent } from './bin.ts';
import { type CountCells, cellsFor, hatchIn, liveDay, startAfresh } from './count-cells.ts';
import { firstAdult, firstYoung, totalHeads } from './lot.ts';
import type { Reading, Start } from './replay.ts';
import { type SizeSigns, signsOf } from './size-signs.ts';
import { type BinState, type Life, nextDay } from './state.ts';

/** What was seen of a bin that can teach. */
export interface Evidence {
  readonly counts: number;
  /** Levels by eye. */
  readonly levels: number;
  readonly weighings: number;
  /** Glances at the size, sized counts and weighed samples. */
  readonly sizes: number;
  readonly firstAdults: number;
  /** Times the dead were taken out, and how many they were. */
  readonly timesDead: number;
  readonly dead: number;
}

/** 5, 50 and 95 % quantiles. */
export interface Range {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** A count, a level by eye or a weighing: the heads it speaks of, and how many were expected before it was known. */
export interface Look {
  readonly day: DayNumber;
  readonly kind: 'counted' | 'looked' | 'weighed';
  readonly heads: number;
  readonly expected: Range;
}

export interface Mind {
  readonly policy: Policy;
  readonly speeds: { readonly coarse: Grid; readonly fine: Grid };
  readonly hazards: Grid;
  /** One life and one state for each coarse speed. */
  readonly lives: readonly Life[];
  states: readonly BinState[];
  readonly cells: CountCells;
  /** ln of the chance of all sizes seen, by fine speed. */
  readonly lnSizes: Float64Array;
  /** Share of adults by coarse speed when somebody last looked inside, and when on an earlier day. */
  adultsSeen: Float64Array;
  adultsBefore: Float64Array;
  readonly readings: Map<BinEvent, Reading>;
  readonly looks: Look[];
  evidence: Evidence;
}

const NOTHING_SEEN: Evidence = {
  counts: 0,
  levels: 0,
  weighings: 0,
  sizes: 0,
  firstAdults: 0,
  timesDead: 0,
  dead: 0,
};

/** The prior, and the heads known at the start. */
export function openMind(life: Omit<Life, 'speed'>, policy: Policy, { state }: Start): Mind {
  const speeds = normalGrids(policy.speedLogSd.value);
  const hazards = gammaGrid(policy.hazardCv.value);
  const lives = Array.from(speeds.coarse.x, (log): Life => ({ ...life, speed: Math.exp(log) }));
  const cells = cellsFor(lives.length, hazards.x);
  startAfresh(cells, totalHeads(state.heads, life.chain.firstHead), state.doubtCv);
  return {
    policy,
    speeds,
    hazards,
    lives,
    states: lives.map(() => state),
    cells,
    lnSizes: new Float64Array(speeds.fine.x.length),
    adultsSeen: new Float64Array(lives.length),
    adultsBefore: new Float64Array(lives.length),
    readings: new Map(),
    looks: [],
    evidence: NOTHING_SEEN,
  };
}

/** One day at every speed. */
export function passDay(mind: Mind, day: DayNumber): void {
  mind.adultsBefore = mind.adultsSeen;
  const frozen = mind.lives[0]?.bin.role === 'frozen';
  const unwritten = frozen ? 0 : mind.policy.doubtGrowthPerDay.value;
  mind.states = mind.states.map((state, i) => {
    const life = mind.lives[i] as Life;
    const { firstHead } = life.chain;
    const before = totalHeads(state.heads, firstHead);
    const { state: next } = nextDay(life, state, day);
    const after = totalHeads(next.heads, firstHead);
    if (before <= 0) {
      hatchIn(mind.cells, i, after);
      return next;
    }
    const kept = life.bin.role === 'colony' ? keptOf(life, state, day) : after;
    const lnSurvival = Math.log(Math.min(1, kept / before));
    liveDay(mind.cells, i, { lnSurvival, gained: Math.max(0, after - kept) / before, unwritten });
    return next;
  });
}

/** How many of today's heads are alive tomorrow, those that hatch apart. */
function keptOf(life: Life, state: BinState, day: DayNumber): number {
  const heads = state.heads.map((n, j) => (j < firstYoung(life.chain) ? 0 : n));
  return totalHeads(nextDay({ ...life, barren: true }, { ...state, heads }, day).state.heads);
}

/** How likely each cell is by now; they sum to 1. */
export function cellWeights({ speeds, hazards, lnSizes, cells }: Mind): Float64Array {
  const sizes = coarsened(lnSizes);
  const perSpeed = hazards.x.length;
  const ln = cells.lnFit.map((fit, c) => {
    const i = Math.floor(c / perSpeed);
    const prior = (speeds.coarse.lnWeight[i] as number) + (hazards.lnWeight[c % perSpeed] as number);
    return fit + prior + (sizes[i] as number);
  });
  return normalised(ln);
}

/** How likely each fine speed is by what was seen of sizes. */
export const speedWeights = ({ speeds, lnSizes }: Mind): Float64Array =>
  normalised(speeds.fine.lnWeight.map((ln, k) => ln + (lnSizes[k] as number)));

/** Mean of the heads over the cells. */
export const meanHeads = ({ cells }: Mind, weights: Float64Array): number =>
  weights.reduce((sum, weight, c) => sum + weight * (cells.mean[c] as number), 0);

/** Spread (CV) of the heads over the cells, of that mean. */
export function headsCv({ cells }: Mind, weights: Float64Array, mean: number): number {
  const square = weights.reduce(
    (sum, weight, c) => sum + weight * ((cells.variance[c] as number) + (cells.mean[c] as number) ** 2),
    0,
  );
  return mean > 0 ? Math.sqrt(Math.max(0, square - mean * mean)) / mean : 0;
}

/** Quantiles of the heads over the cells, speeds taken together at each hazard. */
export function headsRange({ cells, hazards }: Mind, weights: Float64Array): Range {
  const perSpeed = hazards.x.length;
  const parts = Array.from(hazards.x, (_, j) => {
    let [weight, first, second] = [0, 0, 0];
    for (let c = j; c < weights.length; c += perSpeed) {
      const [w, m] = [weights[c] as number, cells.mean[c] as number];
      weight += w;
      first += w * m;
      second += w * ((cells.variance[c] as number) + m * m);
    }
    const mean = weight > 0 ? first / weight : 0;
    return { weight, mean, variance: weight > 0 ? Math.max(0, second / weight - mean * mean) : 0 };
  });
  const [low, mid, high] = mixtureQuantiles(parts, [BAND.low, BAND.mid, BAND.high]) as [
    number,
    number,
    number,
  ];
  return { low, mid, high };
}

/** Notes that something was seen. */
export function noteSeen(mind: Mind, more: Partial<Evidence>): void {
  mind.evidence = { ...mind.evidence, ...more };
}

/** Signs of the sizes in the bin, by coarse speed. */
export const signsNow = ({ states, lives }: Mind): readonly (SizeSigns | null)[] =>
  states.map(({ heads }, i) => signsOf((lives[i] as Life).chain, heads));

/** Share of adults, by coarse speed. */
export const adultsNow = ({ states, lives }: Mind): Float64Array =>
  Float64Array.from(states, ({ heads }, i) => {
    const { chain } = lives[i] as Life;
    const total = totalHeads(heads, chain.firstHead);
    return total > 0 ? totalHeads(heads, firstAdult(chain)) / total : 0;
  });

/** The value of the middle speed, which is the published one. */
export const middleOf = <T>(values: ArrayLike<T>): T => values[Math.floor(values.length / 2)] as T;

/** What is so unlikely by all that is known that it is taken to have another cause. */
export const isUnexplained = ({ policy }: Mind, odds: number): boolean =>
  odds < policy.unexplainedBelow.value;
