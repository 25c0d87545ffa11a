/** The lives of the heads of one lot, drawn once for a world: how far each is, how fast it grows, when it dies. */
import { exponential, keyOf, logNormal, uniform } from './dice.ts';
import type { Form } from './kinds.ts';
import { BREEDS, shareAt } from './prey.ts';
import type { Truth } from './truth.ts';

export interface Lot {
  readonly heads: number;
  readonly fromMm: number;
  readonly toMm: number;
  readonly day: number;
  /** Draws of this lot; two lots of one key differ in their heads alone. */
  readonly key: number;
}

export interface Lives {
  readonly share: Float32Array;
  readonly pace: Float32Array;
  readonly dies: Float32Array;
}

const SPEED_LOG_SD = 0.25;
const HAZARD_LOG_SD = 0.6;
const AGE_LOG_SD = 0.3;
/** Lives drawn beyond those asked for. */
const SPARE = 1.5;

const drawn = new WeakMap<Truth, Map<number, Lives>>();

/** Kept by world and lot: whoever plays a world many times meets the same heads again. */
export function livesOf(truth: Truth, form: Form, lot: Lot): Lives {
  const known = drawn.get(truth) ?? new Map<number, Lives>();
  drawn.set(truth, known);
  const old = known.get(lot.key);
  if (old && old.share.length >= lot.heads) return old;
  const lives = draw(truth, form, { ...lot, heads: Math.ceil(lot.heads * (old ? SPARE : 1)) });
  known.set(lot.key, lives);
  return lives;
}

function draw(truth: Truth, form: Form, { heads, fromMm, toMm, day, key: lotKey }: Lot): Lives {
  const breed = BREEDS[form];
  const { speed, hazard } = truth.breeds[form];
  const paceOfLot = (speed * logNormal(lotKey, 0, SPEED_LOG_SD)) / breed.daysToGrown;
  const deaths = breed.deathsPerDay * hazard * logNormal(lotKey, 1, HAZARD_LOG_SD);
  const [share, pace, dies] = [new Float32Array(heads), new Float32Array(heads), new Float32Array(heads)];
  for (let n = 0; n < heads; n += 1) {
    const key = keyOf(lotKey, 100 + n);
    const way = shareAt(breed, fromMm + (toMm - fromMm) * uniform(key, 0));
    const own = paceOfLot * logNormal(key, 1, breed.logSd);
    const aged = way >= 1 ? uniform(key, 3) : 0;
    const old = (1 - way) / own + (1 - aged) * breed.grownDays * logNormal(key, 4, AGE_LOG_SD);
    share[n] = way;
    pace[n] = own;
    dies[n] = day + Math.min(exponential(key, 2) / deaths, old);
  }
  return { share, pace, dies };
}
