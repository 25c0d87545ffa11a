/** Front door: who comes due when and wants how much. */
export { type ExactDistribution, exactItems, exactMeans, exactSum } from './exact.ts';
export { type FeedingDays, feedingDaysFrom, offeredOn } from './feeding-days.ts';
export { type Generosity, type PreyGiven, servedOnRecord } from './generosity.ts';
export type { DemandGroup } from './groups.ts';
export { expectedGrowth, type GrowthPoint } from './growth.ts';
export { type Intake, intakeOf, type MealOnRecord, type MealShare, mealShares } from './intake.ts';
export { type GrowthRecord, instarLadder, type Rung, type SizeSeen } from './ladder.ts';
export { learnedInterval } from './learned.ts';
export { startAnimal, startMeals } from './meal-start.ts';
export {
  COUNTED,
  dangerAfter,
  FOR,
  type Meals,
  mealsFor,
  missedAfter,
  missedBy,
  missesAgain,
  putOnDay,
} from './meal-state.ts';
export { comesDue, itemsOfOne, offered, usualAcceptance } from './meals.ts';
export { cycleStretch } from './moult-pace.ts';
export { type DayBand, type NextMoult, nextMoult } from './next-moult.ts';
export { isSteady } from './offers.ts';
export { type RefusalsSeen, refusalsSeen } from './refusals.ts';
export { type Roster, rosterOf } from './roster.ts';
export { headsKept } from './rows.ts';
export type { Evening, PreyOffer, Serving } from './serving.ts';
