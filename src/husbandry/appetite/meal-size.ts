/** The law of one meal: how many items of the ideal size a row wants, as the meal calendar draws them (meals.ts). */
import { evenVariance } from '../../maths/even.ts';
import { logMoments } from '../../maths/log-normal.ts';
import { normalCdf } from '../../maths/normal.ts';
import type { Roster } from './roster.ts';

/** Probabilities of 0, 1, 2, ... items while the keeper is as generous as usual. */
export function mealLaw(roster: Roster, i: number): Float64Array {
  const rule = roster.rule[i * roster.steps] as number;
  const min = roster.rules.itemsMin[rule] as number;
  const max = roster.rules.itemsMax[rule] as number;
  const heads = roster.heads[i] as number;
  if (heads === 1) return evenly(min, max);
  return sumOfHeads({ heads, min, max });
}

const evenly = (min: number, max: number): Float64Array =>
  Float64Array.from({ length: max + 1 }, (_, k) => (k < min ? 0 : 1 / (max - min + 1)));

/**
 * Sum of whole draws from [min, max], each as likely: by its normal approximation, rounded and held within its bounds.
 */
function sumOfHeads({ heads, min, max }: { heads: number; min: number; max: number }): Float64Array {
  const width = max - min + 1;
  const sd = Math.sqrt(heads * evenVariance(width));
  const mean = (heads * (min + max)) / 2;
  const below = (edge: number): number => (sd > 0 ? normalCdf((edge - mean) / sd) : Number(edge > mean));
  const [least, most] = [heads * min, heads * max];
  return Float64Array.from({ length: most + 1 }, (_, k) => {
    if (k < least) return 0;
    return (k === most ? 1 : below(k + 1 / 2)) - (k === least ? 0 : below(k - 1 / 2));
  });
}

/**
 * Mean items of a meal when the keeper's generosity G varies (log-normal, mean g): the sum m of a meal becomes
 * floor(m G + u), u even on (0, 1), so its mean is m g, but never below one item where something is due:
 * m g + E max(0, 1 - m G), E max(0, 1 - m G) = N(-b) - m g N(-b - s), b = ln(m g)/s - s/2 (Black and Scholes 1973, the put).
 */
export function mealMean(roster: Roster, i: number): number {
  const { mean } = roster.generosity;
  const sd = Math.sqrt(logMoments(roster.generosity).variance);
  const leastOne = (roster.rules.itemsMin[roster.rule[i * roster.steps] as number] as number) > 0;
  return mealLaw(roster, i).reduce((sum, chance, items) => {
    const raised = leastOne && items > 0 ? raisedToOne(items * mean, sd) : 0;
    return sum + chance * (items * mean + raised);
  }, 0);
}

function raisedToOne(items: number, sd: number): number {
  if (sd === 0) return Math.max(0, 1 - items);
  const b = Math.log(items) / sd - sd / 2;
  return normalCdf(-b) - items * normalCdf(-b - sd);
}
