/**
 * How many are in a bin, under each growth speed and hazard it may have: in each cell of that grid a count known by
 * mean and variance, beside it the deaths since the dead were last taken out, and how well the cell has foretold what
 * was seen.
 */
import { lnCountOdds } from '../../maths/count-odds.ts';
import { logMoments, measured } from '../../maths/log-normal.ts';
import { normalCdf } from '../../maths/normal.ts';

export interface CountCells {
  /** Hazard multipliers; cell of speed i and hazard j at [i * hazards.length + j]. */
  readonly hazards: Float64Array;
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  /** Deaths since the dead were last taken out: mean, variance, and covariance with the count. */
  readonly deadMean: Float64Array;
  readonly deadVariance: Float64Array;
  readonly withCount: Float64Array;
  /** ln of the chance of all that was seen. */
  readonly lnFit: Float64Array;
}

export function cellsFor(speeds: number, hazards: Float64Array): CountCells {
  const cells = () => new Float64Array(speeds * hazards.length);
  return {
    hazards,
    mean: cells(),
    variance: cells(),
    deadMean: cells(),
    deadVariance: cells(),
    withCount: cells(),
    lnFit: cells(),
  };
}

/** What a day does to the heads at one speed, at the usual hazard. */
export interface CellDay {
  /** ln of the share that survives the day. */
  readonly lnSurvival: number;
  /** Heads new in the bin over those that were there. */
  readonly gained: number;
  /** Standard deviation of the log of the heads by what nobody writes down. */
  readonly unwritten: number;
}

/**
 * One day at one speed. Survival s = S^h for hazard multiplier h; deaths are binomial, D ~ Bin(N, 1 - s), those gained
 * Poisson, so that V[N'] = (s + g)^2 V + m s (1 - s) + m g, C[N', D'] = (s + g)(C + (1 - s) V) - m s (1 - s).
 */
export function liveDay(cells: CountCells, speed: number, { lnSurvival, gained, unwritten }: CellDay): void {
  const { hazards, mean, variance, deadMean, deadVariance, withCount } = cells;
  for (let j = 0; j < hazards.length; j++) {
    const c = speed * hazards.length + j;
    const [m, v, joint] = [mean[c] as number, variance[c] as number, withCount[c] as number];
    const kept = Math.exp((hazards[j] as number) * lnSurvival);
    const lost = 1 - kept;
    const chance = m * kept * lost;
    const grows = kept + gained;
    deadMean[c] = (deadMean[c] as number) + lost * m;
    deadVariance[c] = (deadVariance[c] as number) + 2 * lost * joint + lost * lost * v + chance;
    withCount[c] = grows * (joint + lost * v) - chance;
    mean[c] = grows * m;
    variance[c] = grows * grows * v + chance + gained * m + (unwritten * grows * m) ** 2;
  }
}

/** Heads that hatch where nobody was left, at one speed: Poisson. */
export function hatchIn({ hazards, mean, variance }: CountCells, speed: number, heads: number): void {
  for (let c = speed * hazards.length; c < (speed + 1) * hazards.length; c++) {
    mean[c] = (mean[c] as number) + heads;
    variance[c] = (variance[c] as number) + heads;
  }
}

/** Heads put in, known to within a CV. */
export function putIn({ mean, variance }: CountCells, heads: number, cv: number): void {
  for (let c = 0; c < mean.length; c++) {
    mean[c] = (mean[c] as number) + heads;
    variance[c] = (variance[c] as number) + (cv * heads) ** 2;
  }
}

/** Heads taken out, counted; a cell with fewer is empty: the count is doubted, never the meal. */
export function takeOut({ mean }: CountCells, heads: number): void {
  for (let c = 0; c < mean.length; c++) mean[c] = Math.max(0, (mean[c] as number) - heads);
}

/** So many are in it, whatever was thought before; what died until now says nothing more of how many there are. */
export function startAfresh({ mean, variance, withCount }: CountCells, heads: number, cv: number): void {
  mean.fill(heads);
  variance.fill((cv * heads) ** 2);
  withCount.fill(0);
}

/** Heads read with an error of this log-sd; at speed i as `readings[i]`. */
export interface CountReading {
  readonly readings: Float64Array;
  readonly logSd: number;
}

/** A cell thought empty in which something is found held one at least: by its own doubt, or against all odds. */
const atLeastOne = (heads: number): number => Math.max(1, heads);

/** Chance, by these weights, of a reading as low or lower, or as high or higher, whichever is less. */
export function oddsOfReading(
  cells: CountCells,
  weights: Float64Array,
  { readings, logSd }: CountReading,
): number {
  let below = 0;
  weights.forEach((weight, c) => {
    if (weight === 0) return;
    const m = atLeastOne(cells.mean[c] as number);
    const { mean, variance } = logMoments({ mean: m, variance: cells.variance[c] as number });
    const sd = Math.sqrt(variance + logSd * logSd);
    const off = Math.log(readings[Math.floor(c / cells.hazards.length)] as number) - mean;
    below += weight * (sd > 0 ? normalCdf(off / sd) : Number(off > 0));
  });
  return Math.min(below, 1 - below);
}

/** Every cell learns from a reading; what is learned of the count is learned of the dead that go with it. */
export function readCount(cells: CountCells, { readings, logSd }: CountReading): void {
  const { hazards, mean, variance, deadMean, deadVariance, withCount, lnFit } = cells;
  for (let c = 0; c < mean.length; c++) {
    const before = { mean: atLeastOne(mean[c] as number), variance: variance[c] as number };
    const reading = readings[Math.floor(c / hazards.length)] as number;
    if (before.variance + logSd <= 0) continue;
    const { now, lnDensity } = measured(before, reading, logSd);
    lnFit[c] = (lnFit[c] as number) + lnDensity;
    mean[c] = now.mean;
    variance[c] = now.variance;
    if (before.variance <= 0) continue;
    const slope = (withCount[c] as number) / before.variance;
    deadMean[c] = Math.max(0, (deadMean[c] as number) + slope * (now.mean - before.mean));
    deadVariance[c] = (deadVariance[c] as number) + slope * slope * (now.variance - before.variance);
    withCount[c] = slope * now.variance;
  }
}

/** Chance, by these weights, of finding so many dead or more: a crash is told apart from a high hazard, few dead are always learned from. */
export function oddsOfDead(cells: CountCells, weights: Float64Array, dead: number): number {
  return weights.reduce((sum, weight, c) => {
    const sd = Math.sqrt(cells.deadVariance[c] as number);
    const off = (cells.deadMean[c] as number) + 1 / 2 - dead;
    return weight === 0 ? sum : sum + weight * (sd > 0 ? normalCdf(off / sd) : Number(off > 0));
  }, 0);
}

/**
 * All dead since the last time were taken out, so many. Each cell is weighed by how likely it held that number to be,
 * where it `teaches`; and since those deaths are now known, the count keeps none of their doubt:
 * N | D = k has mean m + C/V (k - d) and variance P - C^2/V.
 */
export function takeDead(cells: CountCells, dead: number, teaches: boolean): void {
  const { mean, variance, deadMean, deadVariance, withCount, lnFit } = cells;
  for (let c = 0; c < mean.length; c++) {
    const [d, v, joint] = [deadMean[c] as number, deadVariance[c] as number, withCount[c] as number];
    const slope = v > 0 && teaches ? joint / v : -1;
    if (teaches) lnFit[c] = (lnFit[c] as number) + lnCountOdds(dead, d, v);
    mean[c] = Math.max(0, (mean[c] as number) + slope * (dead - d));
    if (teaches && v > 0) variance[c] = Math.max(0, (variance[c] as number) - (joint * joint) / v);
  }
  for (const known of [deadMean, deadVariance, withCount]) known.fill(0);
}
