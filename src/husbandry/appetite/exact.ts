/**
 * Demand in closed form, for animals about which nothing changes: how many meals fall due on which day, and the whole
 * distribution of items wanted where no cause is shared between animals. The check on the simulation.
 */
import { convolve, momentsOf } from '../../maths/convolve.ts';
import { BAND, countQuantile } from '../../maths/quantile.ts';
import type { FeedingDays } from './feeding-days.ts';
import { mealLaw, mealMean } from './meal-size.ts';
import { firstOffers, isSteady, nextOffers } from './offers.ts';
import type { Roster } from './roster.ts';

export interface Ahead {
  readonly feeding: FeedingDays;
  /** Days of the horizon. */
  readonly days: number;
}

export interface Causes {
  /** Chance that an evening is skipped; its meals go to the next feeding day. */
  readonly skipped: number;
}

/**
 * Mean items wanted by a row on each day, or null where moults, arrivals or departures change it on the way. Skipped
 * evenings and generosity are shared between animals, but the mean of each animal is exact all the same.
 */
export function exactMeans(
  roster: Roster,
  i: number,
  { feeding, days, skipped }: Ahead & Causes,
): Float64Array | null {
  if (!isSteady(roster, i)) return null;
  const listed = new Float64Array(feeding.days + 1);
  const due = new Float64Array(days);
  for (const [day, chance] of firstOffers(roster, i, feeding)) add(listed, day, chance);
  for (let day = 0; day < days; day++) {
    const chance = listed[day] as number;
    if (chance === 0) continue;
    due[day] = chance * (1 - skipped);
    if (skipped > 0) add(listed, feeding.next[day + 1] as number, chance * skipped);
    for (const [next, share] of nextOffers(roster, i, { feeding, day }))
      add(listed, next, chance * (1 - skipped) * share);
  }
  const items = mealMean(roster, i);
  return due.map((meals) => meals * items);
}

function add(values: Float64Array, at: number, amount: number): void {
  if (at < values.length) values[at] = (values[at] as number) + amount;
}

/**
 * Probabilities of 0, 1, 2, ... items wanted by a row within the horizon, with no evening skipped and the keeper as
 * generous as usual; null where moults, arrivals or departures change it on the way. Forward over days: the chance
 * that the next meal is offered on day d with k items wanted before.
 */
export function exactItems(roster: Roster, i: number, { feeding, days }: Ahead): Float64Array | null {
  if (!isSteady(roster, i)) return null;
  const meal = mealLaw(roster, i);
  const before: (Float64Array | undefined)[] = Array.from({ length: days });
  let done = new Float64Array(1);
  const arrive = (day: number, chances: Float64Array, share: number): void => {
    if (day >= days) done = plus(done, chances, share);
    else before[day] = plus(before[day] ?? new Float64Array(1), chances, share);
  };
  for (const [day, chance] of firstOffers(roster, i, feeding)) arrive(day, Float64Array.of(1), chance);
  for (let day = 0; day < days; day++) {
    const here = before[day];
    if (!here) continue;
    const after = convolve(here, meal);
    for (const [next, share] of nextOffers(roster, i, { feeding, day })) arrive(next, after, share);
  }
  return done;
}

/** sum + share x chances, as long as the longer. */
function plus(sum: Float64Array, chances: Float64Array, share: number): Float64Array<ArrayBuffer> {
  const result = new Float64Array(Math.max(sum.length, chances.length));
  result.set(sum);
  chances.forEach((chance, k) => {
    result[k] = (result[k] as number) + share * chance;
  });
  return result;
}

export interface ExactDistribution {
  readonly mean: number;
  readonly variance: number;
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** Mean, variance and 5, 50, 95 % quantiles of what several independent rows want together. */
export function exactSum(rows: readonly Float64Array[]): ExactDistribution {
  const together = rows.reduce<Float64Array>((sum, row) => convolve(sum, row), Float64Array.of(1));
  return {
    ...momentsOf(together),
    low: countQuantile(together, BAND.low),
    mid: countQuantile(together, BAND.mid),
    high: countQuantile(together, BAND.high),
  };
}
