/** Flour beetles in their flour: eggs and pupae are eaten, as the larva-pupa-adult model has it. */
import type { Crowding } from '../../husbandry/prey/index.ts';
import { disputed, memory, published } from '../sourced.ts';

/** The model's volume of 1 is 20 g of flour: a coefficient per beetle in 20 g is twenty times as great per beetle in a gram. */
const GRAMS_PER_VOLUME = 20;

const UNIT = 'grams of flour per eater';
const OTHER_SET = 'estimated from a control line that nobody interfered with';

/** The coefficient per volume of two published sets, turned to grams. */
const eatenAt = (perVolume: number, otherPerVolume: number, measured: string) =>
  disputed(
    published(perVolume * GRAMS_PER_VOLUME, UNIT, 'dennis1995', `derived: ${perVolume} x 20 g; ${measured}`),
    OTHER_SET,
    [
      {
        said: `${Number((otherPerVolume * GRAMS_PER_VOLUME).toFixed(4))} grams of flour per eater`,
        source: 'costantino1997',
      },
    ],
  );

export const flourCrowding = (measured: string): Crowding => ({
  by: 'medium',
  headsPerUnit: published(
    44,
    'heads per gram of flour',
    'chapman1928',
    'derived: all stages, eggs too, on days 101 to 156 at 27 C, 36-52; heads without eggs are fewer, so that it seldom binds',
  ),
  deathsPerDayOver: memory(
    0,
    'per day and capacity above the first',
    'our own: what is too much is eaten, no other deaths were measured',
  ),
  eaten: [
    { stage: 'egg', by: 'young', perEater: eatenAt(0.0093, 0.01209, measured) },
    { stage: 'egg', by: 'adult', perEater: eatenAt(0.011, 0.01155, measured) },
    { stage: 'pupa', by: 'adult', perEater: eatenAt(0.0178, 0.0047, measured) },
  ],
});
