/** What is believed of a bin today: learned from what was seen, laid out for draws, and carried on at any growth speed. */

import {
  between,
  type Grid,
  gridQuantiles,
  lnSums,
  momentsOn,
  normalised,
  RANK_SHARES,
  refined,
} from '../../maths/belief-grid.ts';
import { logMoments } from '../../maths/log-normal.ts';
import { BAND } from '../../maths/quantile.ts';
import type { DayNumber } from '../calendar.ts';
import type { Bin } from './bin.ts';
import { startAfresh } from './count-cells.ts';
import { learnFrom } from './learn.ts';
import {
  cellWeights,
  type Evidence,
  headsCv,
  headsRange,
  type Look,
  type Mind,
  meanHeads,
  openMind,
  passDay,
  type Range,
} from './mind.ts';
import { binOn, eventsUntil, type Replay, reread, type Start, startOf } from './replay.ts';
import type { BinState } from './state.ts';

/** A multiple of the published value, which is 1. */
export interface Learned extends Range {
  /** Hardly surer than before anything was seen: there is too little to learn from. */
  readonly tooLittle: boolean;
}

export interface Belief {
  readonly heads: Range & { readonly mean: number; readonly cv: number };
  readonly speed: Learned;
  readonly hazard: Learned;
  readonly evidence: Evidence;
  readonly looks: readonly Look[];
  /** Mean and standard deviation of the log of growth speed. */
  readonly speedLog: { readonly mean: number; readonly sd: number };
  readonly ranks: Ranks;
  /** The bin today if it grew at this speed all along. */
  readonly stateAt: (speed: number) => BinState;
}

/** The belief as equally likely ranks, for draws: a speed, given it a hazard, given both a count. */
export interface Ranks {
  /** Logs of growth speed, ascending. */
  readonly speedLogs: Float64Array;
  /** Logs of the speeds at which hazards are told. */
  readonly atLogs: Float64Array;
  /** Hazard multipliers, ascending by rank, at [speed * ranks + rank]. */
  readonly hazards: Float64Array;
  /** With each of them: the mean count over that of the whole belief, and the log-sd of the count. */
  readonly countRatios: Float64Array;
  readonly countLogSds: Float64Array;
}

const BAND_SHARES = [BAND.low, BAND.mid, BAND.high] as const;

/** The belief on the evening of `day`, before tonight's feeding. */
export function beliefOf(bin: Bin, day: DayNumber, replay: Omit<Replay, 'speed'>): Belief {
  const { chain, policy, climate } = replay;
  const start = learningStart(bin, day, replay);
  const mind = openMind({ chain, bin, climate }, policy, start);
  if (bin.role === 'cup') guessCup(mind, binOn(bin, day, replay), day);
  else follow(mind, start, day);
  const weights = cellWeights(mind);
  const mean = meanHeads(mind, weights);
  const speeds = speedsBelieved(mind);
  return {
    heads: { mean, cv: headsCv(mind, weights, mean), ...headsRange(mind, weights) },
    speed: learnedSpeed(mind, speeds),
    hazard: learnedHazard(mind, hazardsBelieved(mind, weights)),
    evidence: mind.evidence,
    looks: mind.looks,
    speedLog: momentsOn(mind.speeds.fine.x, speeds),
    ranks: ranksOf(mind, { speeds, mean }),
    stateAt: (speed) =>
      bin.role === 'cup'
        ? binOn(bin, day, { ...replay, speed })
        : reread(bin, day, { ...replay, speed, start, readings: mind.readings, heads: mean }),
  };
}

/** From the last count that says all and lies far enough back; what came before counts at the published speed. */
function learningStart(bin: Bin, day: DayNumber, replay: Replay): Start {
  const from = day - replay.policy.learnDays.value;
  const early = startOf(replay.chain, bin, from);
  if (early.events.length === 0) {
    const events = eventsUntil(bin, day);
    return { ...early, day: events[0]?.day ?? day, events };
  }
  const events = eventsUntil(bin, day).filter((event) => from < event.day);
  return { state: binOn(bin, from, replay), day: from, events };
}

function follow(mind: Mind, { day: from, events }: Start, until: DayNumber): void {
  let at = from;
  for (const event of events) {
    for (; at < event.day; at++) passDay(mind, at);
    learnFrom(mind, event);
  }
  for (; at < until; at++) passDay(mind, at);
}

/** A cup has no heads to count: it is known by its look, and doubted since. */
function guessCup({ cells, policy }: Mind, { lookedOn, doubtCv }: BinState, day: DayNumber): void {
  const since = lookedOn === null ? 0 : day - lookedOn;
  startAfresh(cells, 1, Math.hypot(doubtCv, policy.doubtGrowthPerDay.value * Math.sqrt(since)));
}

/** How likely each fine speed is by all that was seen. */
function speedsBelieved({ speeds, hazards, cells, lnSizes }: Mind): Float64Array {
  const byCounts = refined(lnSums(cells.lnFit, hazards.lnWeight));
  return normalised(
    speeds.fine.lnWeight.map((ln, k) => ln + (lnSizes[k] as number) + (byCounts[k] as number)),
  );
}

const hazardsBelieved = ({ hazards }: Mind, weights: Float64Array): Float64Array =>
  hazards.x.map((_, j) => {
    let sum = 0;
    for (let c = j; c < weights.length; c += hazards.x.length) sum += weights[c] as number;
    return sum;
  });

function learnedSpeed({ speeds, policy }: Mind, weights: Float64Array): Learned {
  return learned(speeds.fine, weights, policy.tooLittleShare.value);
}

function learnedHazard({ hazards, policy }: Mind, weights: Float64Array): Learned {
  return learned({ ...hazards, x: hazards.x.map(Math.log) }, weights, policy.tooLittleShare.value);
}

/** The band of a multiple known by its logarithm, beside how wide it was before. */
function learned({ x, lnWeight }: Grid, weights: Float64Array, tooLittleShare: number): Learned {
  const bandOf = (by: Float64Array) =>
    gridQuantiles(x, by, BAND_SHARES) as unknown as [number, number, number];
  const [low, mid, high] = bandOf(weights);
  const [least, , most] = bandOf(normalised(lnWeight));
  const tooLittle = high - low >= tooLittleShare * (most - least);
  return { low: Math.exp(low), mid: Math.exp(mid), high: Math.exp(high), tooLittle };
}

interface Believed {
  /** By fine speed. */
  readonly speeds: Float64Array;
  /** Heads of the whole belief. */
  readonly mean: number;
}

function ranksOf({ speeds: grids, hazards, cells }: Mind, { speeds, mean }: Believed): Ranks {
  const atLogs = grids.coarse.x;
  const sized = () => new Float64Array(atLogs.length * RANK_SHARES.length);
  const ranks = { hazards: sized(), countRatios: sized(), countLogSds: sized() };
  const places = hazards.x.map((_, j) => j);
  atLogs.forEach((_, i) => {
    const row = (values: Float64Array) => values.subarray(i * places.length, (i + 1) * places.length);
    const likely = normalised(row(cells.lnFit).map((fit, j) => fit + (hazards.lnWeight[j] as number)));
    gridQuantiles(places, likely, RANK_SHARES).forEach((place, r) => {
      const at = i * RANK_SHARES.length + r;
      const count = { mean: between(row(cells.mean), place), variance: between(row(cells.variance), place) };
      ranks.hazards[at] = between(hazards.x, place);
      ranks.countRatios[at] = mean > 0 ? count.mean / mean : 1;
      ranks.countLogSds[at] = count.mean > 0 ? Math.sqrt(logMoments(count).variance) : 0;
    });
  });
  return { speedLogs: gridQuantiles(grids.fine.x, speeds, RANK_SHARES), atLogs, ...ranks };
}
