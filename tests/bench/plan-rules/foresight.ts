/**
 * The best plan found by search when the world is known beforehand: from the best plans anybody made in this world, by
 * changes of packs, weeks, sellers and of what is left alone, each judged by playing the world on from the week it
 * changes.
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

export interface Foreseen extends Found {
  /** What had been found after a quarter of the changes: how much more searching would bring. */
  readonly atQuarter: Score;
}

interface Playing extends Found {
  /** The world before every third week, and what it had come to by then. */
  readonly kept: readonly House[];
  readonly marks: readonly number[];
  readonly sum: number;
}

export interface Search {
  readonly year: Year;
  /** Changes tried. */
  readonly budget: number;
  /** How much harm weighs against money: 1 as stated. */
  readonly weight: number;
}

/** How much worse than now a change may be and still be kept, on average, at the start. */
const SLACK = 0.0005;
/** A change is given up when, so many weeks on, it is still worse by this share of the year. */
const GIVEN_UP_WEEKS = 8;
const GIVEN_UP = 0.002;

/** Searches from the best of the plans given; `budget` changes are tried. */
export function foresee(room: Room, starts: readonly Packs[], { year, budget, weight }: Search): Foreseen {
  const first = houseOf(room, year, false);
  const begin = { kept: [first], marks: [0], rival: null, from: 0, weight };
  let now = starts
    .map((packs) => playOn(packs, begin) as Playing)
    .reduce((best, each) => (each.sum < best.sum ? each : best));
  let best = now;
  let atQuarter = now.score;
  const key = keyOf(year.seed, 9_000_000 + Math.round(1000 * weight));
  for (let n = 0; n < budget; n += 1) {
    if (n === Math.floor(budget / 4)) atQuarter = best.score;
    const { packs, week } = changed(now.packs, keyOf(key, n), room.colonies.length);
    if (week < 0) continue;
    const next = playOn(packs, { kept: now.kept, marks: now.marks, rival: now, from: week, weight });
    const slack = SLACK * now.sum * (1 - n / budget) ** 2 * -Math.log(uniform(key, 5_000_000 + n));
    if (next && next.sum <= now.sum + slack) now = next;
    if (now.sum < best.sum) best = now;
  }
  return { score: best.score, packs: best.packs, atQuarter };
}

interface From {
  readonly kept: readonly House[];
  readonly marks: readonly number[];
  readonly rival: Playing | null;
  readonly from: number;
  readonly weight: number;
}

/** Plays on from the last kept state before a week; null when it falls too far behind the rival. */
function playOn(packs: Packs, { kept: before, marks: so, rival, from, weight }: From): Playing | null {
  const start = Math.floor(from / KEPT_EVERY);
  const [kept, marks] = [before.slice(0, start + 1), so.slice(0, start + 1)];
  const house = copyOf(kept[start] as House);
  for (let week = start * KEPT_EVERY; week < packs.weeks; week += 1) {
    if (week % KEPT_EVERY === 0 && week > start * KEPT_EVERY) {
      const mark = cameTo(house, weight);
      const behind = rival ? mark - (rival.marks[kept.length] as number) : 0;
      if (rival && week >= from + GIVEN_UP_WEEKS && behind > GIVEN_UP * rival.sum * packs.weeks) return null;
      kept.push(copyOf(house));
      marks.push(mark);
    }
    live(house, stepsOf(packs, week));
  }
  const score = scoreOf(house);
  return { packs, score, kept, marks, sum: cameTo(house, weight) / packs.weeks };
}

/** Money and harm of a world up to now, in cents. */
function cameTo(house: House, weight: number): number {
  const score = scoreOf(house);
  const { cents, harm } = pointOf(score);
  return (cents + weight * harm) * score.weeks;
}
