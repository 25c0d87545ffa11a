/**
 * The best plan found by search when the world is known beforehand: from the best plans anybody made in this world, by
 * changes of packs, weeks and sellers, each judged by playing the world on from the week it changes.
 */
import { keyOf, uniform } from '../plan-worlds/dice.ts';
import { copyOf, type House, houseOf, live, type Year } from '../plan-worlds/house.ts';
import type { Room } from '../plan-worlds/rooms.ts';
import { type Score, scoreOf } from '../plan-worlds/score.ts';
import { changed } from './changes.ts';
import { type Packs, stepsOf } from './packs.ts';
import { pointOf } from './prices.ts';

/** Weeks between the states that are kept to go on from. */
const KEPT_EVERY = 3;

export interface Found {
  readonly score: Score;
  readonly packs: Packs;
}

interface Playing extends Found {
  /** The world before every third week. */
  readonly kept: readonly House[];
  readonly sum: number;
}

export interface Search {
  readonly year: Year;
  /** Worlds played on. */
  readonly budget: number;
  /** How much harm weighs against money: 1 as stated. */
  readonly weight: number;
}

/** Searches from the best of the plans given; `budget` changes are tried. */
export function foresee(room: Room, starts: readonly Packs[], { year, budget, weight }: Search): Found {
  const first = houseOf(room, year, false);
  const playings = starts.map((packs) => playOn(packs, { kept: [first], from: 0, weight }));
  let now = playings.reduce((best, each) => (each.sum < best.sum ? each : best));
  let best = now;
  const key = keyOf(year.seed, 9_000_000 + Math.round(1000 * weight));
  for (let n = 0; n < budget; n += 1) {
    const { packs, week } = changed(now.packs, keyOf(key, n));
    if (week < 0) continue;
    const next = playOn(packs, { kept: now.kept, from: week, weight });
    const slack = SLACK * now.sum * (1 - n / budget) ** 2 * -Math.log(uniform(key, 5_000_000 + n));
    if (next.sum <= now.sum + slack) now = next;
    if (now.sum < best.sum) best = now;
  }
  return best;
}

/** How much worse than now a change may be and still be kept, on average, at the start. */
const SLACK = 0.0005;

interface From {
  readonly kept: readonly House[];
  readonly from: number;
  readonly weight: number;
}

function playOn(packs: Packs, { kept: before, from, weight }: From): Playing {
  const start = Math.floor(from / KEPT_EVERY);
  const kept = before.slice(0, start + 1);
  const house = copyOf(kept[start] as House);
  for (let week = start * KEPT_EVERY; week < packs.weeks; week += 1) {
    if (week % KEPT_EVERY === 0 && week > start * KEPT_EVERY) kept.push(copyOf(house));
    live(house, stepsOf(packs, week));
  }
  const score = scoreOf(house);
  const { cents, harm } = pointOf(score);
  return { packs, score, kept, sum: cents + weight * harm };
}
