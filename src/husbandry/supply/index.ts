/** Front door: will the feeders last, what helps, what is offered tonight, what will be wanted. */
export { type Alive, type Fitting, type LarderNow, larderNow } from './alive-now.ts';
export type {
  Act,
  BinAnswer,
  BinLearned,
  Chance,
  CoverAnswer,
  GroupAnswer,
  Shortfall,
  Spectrum,
  Spread,
  Verdict,
} from './answer.ts';
export type { AwayAnimal, AwayPlan, Standing } from './away.ts';
export type { AwayRounds } from './away-rounds.ts';
export { type BinAhead, type BinWeek, binAhead, type FedBy } from './bin-ahead.ts';
export { type BinGoes, binsGo } from './bin-goes.ts';
export { binRemarks, keepsTo } from './bin-remarks.ts';
export { type BinToday, type BinTold, binToday, binTold } from './bin-today.ts';
export { afterBox, type BoxAnswer, type BoxLine } from './box-came.ts';
export { type CoverOptions, horizonOf, type Judged, judge, type Kept } from './cover.ts';
export { afterCrash, type CrashAnswer, type ShortAfter } from './crash.ts';
export { type AtRisk, atRisk } from './crash-neighbours.ts';
export type { StartNow } from './crash-starts.ts';
export { type CupCalendar, type CupsHere, cupCalendars, cupsHere } from './cup-calendar.ts';
export { type DemandForecast, forecastDemand, type GroupDemand } from './demand.ts';
export { demandRun, itemsOn } from './demand-run.ts';
export { type Diet, dietOf } from './diet.ts';
export { eveningOf } from './evening.ts';
export { type Fed, type UsedBin, usedBins } from './evening-use.ts';
export { binNow, type Holding, holdingOf } from './holding.ts';
export { type Laid, nothingLaid } from './laid.ts';
export { larderFor } from './larder.ts';
export { allLostWithin, type Lines, linesOf } from './lines.ts';
export { nextMealOf, reasonToWait } from './next-meal.ts';
export { larderThrough } from './run.ts';
export { type Shelf, type StandingPrey, shelvesOf, standingTonight } from './shelf-stock.ts';
export type { ShortGroup } from './short-since.ts';
export { type Stock, stockOf } from './stock.ts';
export type { Setting, StockBin } from './stock-bin.ts';
export { sundayCheck } from './sunday.ts';
export { type HatchWave, hatchWave } from './wave.ts';
export { type WeekAhead, type WeekGroup, type WeeksAnswer, weeksAhead } from './weeks-ahead.ts';
export { type AwayAsked, type WhileAway, whileAway, withoutAbsence } from './while-away.ts';
export { spokenDay } from './wording.ts';
export { type YoungPrey, youngPrey } from './young-prey.ts';
