/** Whether an animal eats as much as its stage needs: prey mass a week over its own mass, from its record. */
import { normalQuantile } from '../../maths/normal.ts';
import { BAND } from '../../maths/quantile.ts';
import { type Animal, eaterOf, type Kind, type Outcome, ruleOf } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import { meanCube } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK, type Mg, type Mm } from '../units.ts';
import type { Rung } from './ladder.ts';

/** One offer on record and what became of it. */
export interface MealOnRecord {
  readonly day: DayNumber;
  readonly outcome: Outcome;
  /** Prey species; null when it was not written down. */
  readonly species: string | null;
  readonly heads: number | null;
  readonly fromMm: Mm | null;
  readonly toMm: Mm | null;
  /** Pieces each prey item was cut into; 1 = whole. */
  readonly portions: number;
}

export interface Intake {
  /** Prey mass a week over own mass, with the 5 and 95 % bounds of its doubt. */
  readonly weekly: { readonly low: number; readonly mid: number; readonly high: number };
  readonly need: readonly [number, number];
  readonly verdict: 'too little' | 'right' | 'too much';
  /** Whether the doubt reaches into what is right. */
  readonly unsure: boolean;
  /** Meals eaten, whole or in part, that it rests on, and the days they were eaten in. */
  readonly meals: number;
  readonly days: number;
}

/** One offer as a share of the mass of the animal (of each head of a group) that day; null when it cannot be weighed. */
export interface MealShare {
  readonly day: DayNumber;
  readonly outcome: Outcome;
  readonly share: number | null;
}

interface Weighing {
  readonly meals: readonly MealOnRecord[];
  /** The sizes it had, of which each meal takes that of its day. */
  readonly ladder: readonly Rung[];
}

/** Every offer of the days looked back on whose outcome is known, oldest first. */
export function mealShares(snapshot: Snapshot, animal: Animal, { meals, ladder }: Weighing): MealShare[] {
  return meals
    .filter(({ day, outcome }) => outcome !== 'offered' && day <= snapshot.today)
    .toSorted((a, b) => a.day - b.day)
    .map((meal) => {
      const mass = eatenMg(snapshot, animal, meal);
      const own = animal.count * ownMassOn(snapshot, animal, { ladder, day: meal.day });
      return { day: meal.day, outcome: meal.outcome, share: mass === null ? null : mass / own };
    });
}

/**
 * Mass eaten [mg]: heads x c x mean of L^3, c the species' mass per cubic mm, L even between the lengths offered.
 * Part-taken counts the policy's share, refused nothing. Of prey that was cut an animal eats as many pieces as it eats
 * items, as the forecast has it.
 */
function eatenMg(snapshot: Snapshot, animal: Animal, meal: MealOnRecord): Mg | null {
  if (meal.outcome === 'refused') return 0;
  const { facts } = snapshot;
  const species = facts.species.get(meal.species ?? '');
  if (species === undefined || meal.heads === null || meal.fromMm === null || meal.toMm === null) return null;
  const [least, most] = ruleOf(facts.kinds.get(animal.kind) as Kind, animal).mealItems.value;
  const pieces = (animal.count * Math.max(1, Math.round((least + most) / 2))) / meal.portions;
  const heads = meal.portions > 1 ? Math.min(meal.heads, pieces) : meal.heads;
  const eaten = meal.outcome === 'part-taken' ? facts.policy.partTakenShare.value : 1;
  return eaten * heads * species.massPerCubicMm.value * meanCube(meal.fromMm, meal.toMm);
}

/** Own mass of one head on a day [mg], by the size it then had. */
function ownMassOn(
  { facts }: Snapshot,
  animal: Animal,
  { ladder, day }: { readonly ladder: readonly Rung[]; readonly day: DayNumber },
): Mg {
  const kind = facts.kinds.get(animal.kind) as Kind;
  const had = ladder.filter(({ place }) => place !== 'ahead');
  const then = had.findLast(({ since }) => since === null || since <= day) ?? had[0];
  return (then ?? eaterOf(kind, animal)).massMg;
}

/**
 * Intake a week R = 7 sum(y) / (today - t1): y each meal's share of own mass, counted after the offer t1 that starts
 * the clock. Null with fewer meals than the policy needs. Its doubt is that of a ratio of sums (Cochran 1977,
 * Sampling Techniques, ch. 6): se^2 = n/(n - 1) sum (y - R x/7)^2 7^2 / (today - t1)^2, x the days before each meal.
 */
export function intakeOf(snapshot: Snapshot, animal: Animal, weighing: Weighing): Intake | null {
  const { facts, today } = snapshot;
  const counted = afterStart(snapshot, mealShares(snapshot, animal, weighing));
  const eaten = counted.meals.filter(({ share }) => share > 0).length;
  const days = today - counted.from;
  if (eaten < facts.policy.intakeMealsNeeded.value || days <= 0) return null;
  const perDay = counted.meals.reduce((sum, { share }) => sum + share, 0) / days;
  const error = standardError(counted.meals, perDay, days);
  const half = normalQuantile(BAND.high) * error * DAYS_PER_WEEK;
  const mid = perDay * DAYS_PER_WEEK;
  const need = ruleOf(facts.kinds.get(animal.kind) as Kind, animal).weeklyNeed.value;
  const weekly = { low: Math.max(0, mid - half), mid, high: mid + half };
  return { weekly, need, ...judged(weekly, need), meals: eaten, days };
}

interface Weighed {
  readonly share: number;
  /** Days since the offer before. */
  readonly after: number;
}

interface Counted {
  readonly from: DayNumber;
  readonly meals: readonly Weighed[];
}

/** The clock starts at the last offer before the days looked back on, at the first, or at the last not weighed. */
function afterStart({ facts, today }: Snapshot, shares: readonly MealShare[]): Counted {
  const since = today - facts.policy.intakeDays.value;
  const start = Math.max(
    0,
    shares.findLastIndex(({ day }) => day <= since),
    shares.findLastIndex(({ share }) => share === null),
  );
  const from = shares[start]?.day ?? today;
  const meals = shares.slice(start + 1).map(({ share, day }, i) => ({
    share: share ?? 0,
    after: day - (shares[start + i]?.day ?? from),
  }));
  return { from, meals };
}

function standardError(meals: readonly Weighed[], perDay: number, days: number): number {
  const n = meals.length;
  const squares = meals.reduce((sum, { share, after }) => sum + (share - perDay * after) ** 2, 0);
  return Math.sqrt((n / (n - 1)) * squares) / days;
}

function judged(
  { low, mid, high }: Intake['weekly'],
  [least, most]: readonly [number, number],
): Pick<Intake, 'verdict' | 'unsure'> {
  if (mid < least) return { verdict: 'too little', unsure: high >= least };
  if (mid > most) return { verdict: 'too much', unsure: low <= most };
  return { verdict: 'right', unsure: low < least || high > most };
}
