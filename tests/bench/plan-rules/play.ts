/** A world played through by somebody who buys. */
import { houseOf, live } from '../plan-worlds/house.ts';
import { logOf } from '../plan-worlds/household.ts';
import type { Buyer, Steps } from '../plan-worlds/log.ts';
import type { Room } from '../plan-worlds/rooms.ts';
import { type Score, scoreOf } from '../plan-worlds/score.ts';

export interface Played {
  readonly score: Score;
  /** What was done, week by week. */
  readonly steps: readonly Steps[];
}

export async function play(
  room: Room,
  { seed, weeks }: { seed: number; weeks: number },
  buyer: Buyer,
): Promise<Played> {
  const house = houseOf(room, { seed, weeks });
  const steps: Steps[] = [];
  for (let week = 0; week < weeks; week += 1) {
    const now = await buyer(logOf(house));
    steps.push(now);
    live(house, now);
  }
  return { score: scoreOf(house), steps };
}
