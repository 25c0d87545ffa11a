/** The keeper's generosity: items given over those the rules mean, as far as the meals on record tell. */
import { logSdOf, type Moments, measured } from '../../maths/log-normal.ts';
import { type Animal, eaterOf, type Kind, ruleOf, type StageRule } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import { grouped } from '../grouped.ts';
import type { Policy } from '../policy.ts';
import { itemsWorth, meanCube, windowFor } from '../prey/index.ts';
import type { Facts } from '../snapshot.ts';
import type { Mm } from '../units.ts';
import type { Row } from './rows.ts';

/** Prey of one species, of lengths that lie evenly between two, given whole at the meal of a day. */
export interface PreyGiven {
  readonly day: DayNumber;
  readonly species: string;
  readonly heads: number;
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** A log-normal factor, and the meals on record it was learned from. */
export interface Generosity extends Moments {
  readonly meals: number;
}

const meanItems = ({ mealItems }: StageRule): number => (mealItems.value[0] + mealItems.value[1]) / 2;

/**
 * Meals given to an animal of this size, and the items of the ideal size they came to; a meal with prey that this size
 * takes none of is left out.
 */
export function servedOnRecord(
  kind: Kind,
  animal: Pick<Animal, 'gaugeMm' | 'matured' | 'stageOverride'>,
  { given, facts: { species: known, policy } }: { given: readonly PreyGiven[]; facts: Facts },
): Animal['givenOnRecord'] {
  const rule = ruleOf(kind, animal);
  const eater = eaterOf(kind, animal);
  const itemsOf = ({ species: code, heads, fromMm, toMm }: PreyGiven): number => {
    const species = known.get(code);
    const window = species ? windowFor(rule, eater, species) : null;
    if (!window) return Number.NaN;
    const worth = itemsWorth(
      Math.cbrt(meanCube(fromMm, toMm)),
      window.idealMm,
      policy.smallerItemsMost.value,
    );
    return heads * Math.min(worth, Math.max(1, meanItems(rule)));
  };
  const byMeal = [...grouped(given, ({ day }) => day).values()]
    .map((meal) => meal.reduce((sum, each) => sum + itemsOf(each), 0))
    .filter((items) => !Number.isNaN(items));
  return { meals: byMeal.length, items: byMeal.reduce((a, b) => a + b, 0) };
}

/**
 * Log-normal: of mean 1 and the Book's spread until meals are on record. All their items over all that were meant are a
 * reading of it, whose error shrinks with the root of the number of meals; what the keeper's hand changes over the weeks
 * to come is added. Groups alike are left out: how many they were at each meal is not on record.
 */
export function generosityOf(
  rows: readonly Row[],
  { generosityCv, mealItemsCv, generosityDriftCv }: Policy,
): Generosity {
  const before = { mean: 1, variance: generosityCv.value ** 2 };
  let [meals, given, meant] = [0, 0, 0];
  for (const { animal, steps } of rows) {
    if (animal.count !== 1) continue;
    meals += animal.givenOnRecord.meals;
    given += animal.givenOnRecord.items;
    meant += animal.givenOnRecord.meals * meanItems(steps[0]?.rule as StageRule);
  }
  if (given <= 0 || meant <= 0) return { ...before, meals: 0 };
  const { mean, variance } = measured(
    before,
    given / meant,
    logSdOf(mealItemsCv.value) / Math.sqrt(meals),
  ).now;
  const drift = generosityCv.value > 0 ? generosityDriftCv.value * mean : 0;
  return { mean, variance: variance + drift ** 2, meals };
}
