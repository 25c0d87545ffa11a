/** What can be known at best of a box's speed from glances, and of its hazard from its dead: posteriors by brute force. */
import { normalCdf } from '../../src/maths/normal.ts';
import { CRICKETS, classesOf, HABITS, PARCEL } from './learning-runs.ts';
import { breedOf } from './prey-box.ts';
import { live, type Note } from './prey-worlds/box.ts';
import { facts } from './room.ts';

const breed = breedOf(CRICKETS);

/** Median of a grid's points by the ln of their weights, straight within a step. */
function medianOf(points: readonly number[], lnWeights: readonly number[]): number {
  const most = Math.max(...lnWeights);
  const weights = lnWeights.map((ln) => Math.exp(ln - most));
  const half = weights.reduce((a, b) => a + b, 0) / 2;
  let below = 0;
  for (let i = 0; i < points.length; i += 1) {
    const weight = weights[i]!;
    if (below + weight >= half) {
      const step = points[Math.min(points.length - 1, i + 1)]! - points[i]!;
      return points[i]! + step * ((half - below) / weight - 0.5);
    }
    below += weight;
  }
  return Number.NaN;
}

const SPEED_LOGS = Array.from({ length: 401 }, (_, i) => -1 + i / 200);

/** A great many animals at the published speed, none killed: the median's length by day. */
const medians = (() => {
  const many = live({
    seed: 4711,
    breed: { ...breed, deathsPerDay: 1e-12 },
    nature: { speed: 1, hazard: 1 },
    parcel: { ...PARCEL, heads: 10_000 },
    classes: [],
    habits: { ...HABITS, days: 0, parcelLogSd: 0 },
  });
  return Array.from({ length: 130 }, (_, day) => Math.log(many.medianOn(day)));
})();

/** ln of the median at a speed on a day: growth at another speed is the same growth in another time. */
function lnMedian(speed: number, day: number): number {
  const usual = breed.parts / breed.daysToAdult;
  const at = Math.min(128.99, (day * (usual * speed - breed.deathsPerDay)) / usual);
  const i = Math.floor(at);
  return medians[i]! + (medians[i + 1]! - medians[i]!) * (at - i);
}

/** Median of the posterior of growth speed given every glance. */
export function bestSpeed(notes: readonly Note[]): number {
  const { speedLogSd, sizeSeenCv } = facts.policy;
  const sizes = classesOf(CRICKETS);
  const below = (mm: number, day: number, log: number) =>
    normalCdf((Math.log(mm) - lnMedian(Math.exp(log), day)) / sizeSeenCv.value);
  const lnWeights = SPEED_LOGS.map((log) =>
    notes.reduce(
      (sum, note) => {
        if (note.what !== 'looks') return sum;
        const to = note.toMm === sizes[sizes.length - 1]!.toMm ? 1 : below(note.toMm, note.day, log);
        const from = note.fromMm === sizes[0]!.fromMm ? 0 : below(note.fromMm, note.day, log);
        return sum + Math.log(Math.max(1e-300, to - from));
      },
      -((log / speedLogSd.value) ** 2) / 2,
    ),
  );
  return Math.exp(medianOf(SPEED_LOGS, lnWeights));
}

const HAZARD_LOGS = Array.from({ length: 321 }, (_, i) => Math.log(0.02) + (i * Math.log(400)) / 320);
const lnFactorials = (() => {
  const sums = [0];
  for (let n = 1; n < 1000; n += 1) sums.push(sums[n - 1]! + Math.log(n));
  return sums;
})();

/** Median of the posterior of the hazard given every find of dead; how many came is known as a parcel is. */
export function bestHazard(notes: readonly Note[]): number {
  const { hazardCv, overCountCv } = facts.policy;
  const shape = 1 / hazardCv.value ** 2;
  const finds = notes.filter((note) => note.what === 'dead');
  const came = Array.from({ length: 161 }, (_, i) => PARCEL.heads - 80 + i);
  const lnWeights = HAZARD_LOGS.map((log) => {
    const prior = shape * (log - Math.exp(log));
    const sum = came.reduce((total, heads) => {
      let ln = -((Math.log(heads / PARCEL.heads) / overCountCv.value) ** 2) / 2 - Math.log(heads);
      let [left, last] = [heads, 0];
      for (const { day, heads: dead } of finds) {
        if (dead > left) return total;
        const lives = -breed.deathsPerDay * Math.exp(log) * (day - last);
        ln += lnFactorials[left]! - lnFactorials[dead]! - lnFactorials[left - dead]!;
        ln += dead * Math.log(-Math.expm1(lives)) + (left - dead) * lives;
        [left, last] = [left - dead, day];
      }
      return total + Math.exp(ln);
    }, 0);
    return prior + Math.log(Math.max(1e-300, sum));
  });
  return Math.exp(medianOf(HAZARD_LOGS, lnWeights));
}
