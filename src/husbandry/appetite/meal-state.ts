/** The meal calendar's arrays: where each animal stands, and the day and range of its next meal. */
import { purposes } from '../../maths/random.ts';
import { type FeedingDays, offeredOn } from './feeding-days.ts';
import type { Roster } from './roster.ts';

/** What a draw of a meal is for; part of its key. */
export const FOR = purposes(
  'interval',
  'items',
  'acceptance',
  'cycle',
  'phase',
  'presence',
  'rounding',
  'firstInterval',
);

/** What a meal that waits has been counted for: late and dangerous once each, and in all above the meals missed. */
export const COUNTED = { late: 1, danger: 1 << 1, missed: 1 << 2 } as const;

export interface Meals {
  readonly roster: Roster;
  readonly feeding: FeedingDays;
  /** Days of the horizon. */
  readonly days: number;
  /** First animal of each day's list and the next animal after each; -1 ends a list. */
  readonly dayFirst: Int32Array;
  readonly nextOfDay: Int32Array;
  /** Per animal: key in this replicate, moult step, day of the last and next moult. */
  readonly key: Int32Array;
  readonly step: Int32Array;
  readonly moultedOn: Float64Array;
  readonly moultsOn: Float64Array;
  /** Per animal: last day prey was offered (or it was hardening), last day of the range of the meal now due. */
  readonly fedOn: Int32Array;
  readonly rangeTo: Int32Array;
  /** What the meal now due has been counted for, as COUNTED has it. */
  readonly counted: Int32Array;
  /** Day on which the next meal is offered, the horizon's end or later when it lies beyond. */
  readonly dueOn: Int32Array;
  /** Items wanted by the meal now due, at the ideal size. */
  readonly wants: Int32Array;
  readonly present: Int32Array;
  readonly gone: Int32Array;
  /** Generosity of the keeper in this replicate. */
  generosity: number;
}

/** Room for one replicate's calendar; the same arrays serve all replicates. */
export function mealsFor(roster: Roster, feeding: FeedingDays, days: number): Meals {
  const ints = () => new Int32Array(roster.animals);
  return {
    roster,
    feeding,
    days,
    dayFirst: new Int32Array(days),
    nextOfDay: ints(),
    key: ints(),
    step: ints(),
    moultedOn: new Float64Array(roster.animals),
    moultsOn: new Float64Array(roster.animals),
    fedOn: ints(),
    rangeTo: ints(),
    counted: ints(),
    dueOn: ints(),
    wants: ints(),
    present: ints(),
    gone: ints(),
    generosity: 1,
  };
}

export interface MealRange {
  readonly from: number;
  readonly to: number;
  readonly drawn: number;
}

/** Sets the day on which an animal's next meal is offered. */
export function schedule(meals: Meals, i: number, range: MealRange): void {
  meals.dueOn[i] = offeredOn(meals.feeding, range);
  meals.rangeTo[i] = Math.max(range.to, range.drawn);
  meals.counted[i] = 0;
}

/** Puts an animal on a day's list; beyond the horizon nothing is listed. */
export function putOnDay(meals: Meals, i: number, day: number): void {
  if (day >= meals.days) return;
  meals.nextOfDay[i] = meals.dayFirst[day] as number;
  meals.dayFirst[day] = i;
}

/** Last day on which an offer still keeps the meal from being missed. */
export const missedAfter = (meals: Meals, i: number): number => {
  const { roster } = meals;
  const rule = roster.rule[i * roster.steps + (meals.step[i] as number)] as number;
  return (meals.rangeTo[i] as number) + (roster.rules.grace[rule] as number);
};

/**
 * Meals missed by the end of a day: the one that is due, and one more each time its longest interval has gone by since.
 */
export function missedBy(meals: Meals, i: number, day: number): number {
  const over = day - missedAfter(meals, i);
  return over < 0 ? 0 : 1 + Math.floor(over / intervalOf(meals, i));
}

/** First day at whose end it has missed one meal more than so many. */
export const missesAgain = (meals: Meals, i: number, missed: number): number =>
  missedAfter(meals, i) + missed * intervalOf(meals, i);

const intervalOf = ({ roster, step }: Meals, i: number): number =>
  Math.max(1, roster.intervalMax[i * roster.steps + (step[i] as number)] as number);

/** Last day within the animal's safe gap. */
export const dangerAfter = (meals: Meals, i: number): number => {
  const { roster } = meals;
  const rule = roster.rule[i * roster.steps + (meals.step[i] as number)] as number;
  return (meals.fedOn[i] as number) + (roster.rules.safeGap[rule] as number);
};
