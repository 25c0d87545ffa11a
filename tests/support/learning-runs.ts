/** Many boxes lived and learned from, and how often and how far what was learned was right. */
import type { Learned } from '../../src/husbandry/larder/belief.ts';
import type { Policy } from '../../src/husbandry/policy.ts';
import { believed, breedOf, dayLonger, type Kept, speciesOf } from './prey-box.ts';
import { type Habits, type Lived, live } from './prey-worlds/box.ts';
import { diceOf } from './prey-worlds/dice.ts';
import { facts } from './room.ts';

/** House crickets at 28 °C, of a size that grows through the trade's classes in six weeks. */
export const CRICKETS: Kept = { species: speciesOf('acheta-domesticus'), tempC: 28 };
export const PARCEL = { heads: 300, fromMm: 3, toMm: 4.5 };

/** A keeper who looks at the sizes and takes out the dead each week, counts every other, and now and then leaves it. */
export const HABITS: Habits = {
  days: 42,
  glanceEvery: 7,
  countEvery: 14,
  deadEvery: 7,
  fed: { every: 3, heads: 8 },
  skips: 0.12,
  looksAt: 0,
  eyeLogSd: 0.12,
  countLogSd: 0.05,
  parcelLogSd: 0.05,
};

export const classesOf = ({ species }: Kept) => species.sizeClasses.value;

export interface Run {
  readonly speed: number;
  readonly hazard: number;
}

/** Natures drawn from the priors of the product. */
function natureOf(seed: number): Run {
  const dice = diceOf(1_000_003 * (seed + 1));
  const { speedLogSd, hazardCv } = facts.policy;
  return { speed: dice.logNormal(speedLogSd.value), hazard: dice.gammaOfCv(hazardCv.value) };
}

const lived = (seed: number, nature: Run, habits: Habits = HABITS, kept = CRICKETS): Lived =>
  live({ seed, breed: breedOf(kept), nature, parcel: PARCEL, classes: classesOf(kept), habits });

export interface Score {
  runs: number;
  /** Truths below, within and above the 90 % interval. */
  below: number;
  within: number;
  above: number;
  /** Sum of distances of the median from the truth. */
  off: number;
}

const newScore = (): Score => ({ runs: 0, below: 0, within: 0, above: 0, off: 0 });

function scored(score: Score, { low, mid, high }: Omit<Learned, 'tooLittle'>, truth: number): void {
  score.runs += 1;
  if (truth < low) score.below += 1;
  else if (truth > high) score.above += 1;
  else score.within += 1;
  score.off += Math.abs(mid - truth);
}

export const coverageOf = ({ within, runs }: Score): number => within / runs;

/** Boxes of natures drawn from the priors, followed to their last day. */
export function priorRuns(from: number, to: number, habits: Habits = HABITS, policy: Policy = facts.policy) {
  const scores = { speed: newScore(), hazard: newScore(), heads: newScore() };
  for (let seed = from; seed < to; seed += 1) {
    const nature = natureOf(seed);
    const box = lived(seed, nature, habits);
    const belief = believed(CRICKETS, box.notes, habits.days, policy);
    scored(scores.speed, belief.speed, nature.speed);
    scored(scores.hazard, belief.hazard, nature.hazard);
    scored(scores.heads, belief.heads, box.aliveOn(habits.days));
  }
  return scores;
}

/** Mean distances from the truth, of what the program learned and of the best that can be known, each from one kind of note. */
export function besideBest(
  from: number,
  to: number,
  best: {
    readonly speed: (notes: Lived['notes']) => number;
    readonly hazard: (notes: Lived['notes']) => number;
  },
) {
  const only = { ...HABITS, countEvery: null, fed: null };
  const off = { speed: 0, bestSpeed: 0, hazard: 0, bestHazard: 0 };
  for (let seed = from; seed < to; seed += 1) {
    const { speed, hazard } = natureOf(seed);
    const glanced = lived(seed, { speed, hazard: 1 }, { ...only, deadEvery: null }).notes;
    off.speed += Math.abs(believed(CRICKETS, glanced, HABITS.days).speed.mid - speed);
    off.bestSpeed += Math.abs(best.speed(glanced) - speed);
    const dead = lived(seed, { speed: 1, hazard }, { ...only, glanceEvery: null }).notes;
    off.hazard += Math.abs(believed(CRICKETS, dead, HABITS.days).hazard.mid - hazard);
    off.bestHazard += Math.abs(best.hazard(dead) - hazard);
  }
  return { speed: off.speed / off.bestSpeed, hazard: off.hazard / off.bestHazard };
}

/** What was learned of one hazard once so many deaths were written down: coverage, and mean width of the log-interval. */
export function hazardRuns(hazard: number, deaths: number, { from, to }: { from: number; to: number }) {
  const score = newScore();
  let width = 0;
  for (let seed = from; seed < to; seed += 1) {
    const { notes } = lived(seed, { speed: 1, hazard }, { ...HABITS, days: 70, deadEvery: 2 });
    let dead = 0;
    const at = notes.findIndex((note) => {
      if (note.what === 'dead') dead += note.heads;
      return dead >= deaths;
    });
    if (at < 0) continue;
    const belief = believed(CRICKETS, notes.slice(0, at + 1), notes[at]!.day).hazard;
    scored(score, belief, hazard);
    width += Math.log(belief.high / belief.low);
  }
  return { ...score, width: width / score.runs };
}

/** A hair below a length, so that those who have come to it count. */
const to = (mm: number): number => mm * (1 - 1e-6);

/** Days by which the day a box leaves its class is foretold too late, after three weekly glances; grown boxes are left out. */
export function leavingErrors(
  speed: number,
  seeds: { readonly from: number; readonly to: number },
): number[] {
  const today = 21;
  const grownMm = CRICKETS.species.adultLengthMm.value;
  return Array.from({ length: seeds.to - seeds.from }, (_, i) => seeds.from + i).flatMap((seed) => {
    const box = lived(seed, { speed, hazard: 1 }, { ...HABITS, days: today, skips: 0 });
    const until = classesOf(CRICKETS).find(({ toMm }) => box.medianOn(today) < to(toMm))!.toMm;
    if (until > grownMm) return [];
    let leaves = today;
    while (box.medianOn(leaves) < to(until)) leaves += 1;
    return dayLonger(CRICKETS, box.notes, { today, mm: to(until) }) - leaves;
  });
}
