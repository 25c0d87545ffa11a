/** Front door: prey alive in bins, colonies and cups. */
export { type Belief, beliefOf, type Learned, type Ranks } from './belief.ts';
export type {
  Bin,
  BinEvent,
  BinRole,
  CupLook,
  ExpectedDelivery,
  Level,
  Lot,
  Sample,
  Sender,
  Space,
  Where,
} from './bin.ts';
export { isLost } from './bin.ts';
export { type Chain, chainOf } from './chain.ts';
export { type Climate, changingClimate, steadyClimate } from './climate.ts';
export { type ColonyGrowth, colonyGrowth } from './colony-growth.ts';
export { type Capacity, capacityOf, loadOf, NO_PRESSURE } from './crowding.ts';
export { type CupGives, cupGives, fliesFrom, weekFrom } from './cup-life.ts';
export { type Filled, fittingBin } from './fitting-bin.ts';
export { coldSince, coldUntil, isApart, isCold, oldestSince, rests, restsTo } from './keeping-times.ts';
export { between, firstAdult, headsWithin, spreadLot, totalHeads } from './lot.ts';
export type { Evidence, Look } from './mind.ts';
export { type CohortPath, KEPT_MM, pathsOf, preyIn } from './path.ts';
export { colonyRates } from './rates.ts';
export { binOn } from './replay.ts';
export { growthRemarks, layingRemarks } from './species-remarks.ts';
export { type SpeciesSheet, type StageSheet, speciesSheet } from './species-sheet.ts';
export { type BinState, emptyState, type Life, nextDay } from './state.ts';
export {
  adultLot,
  adultSize,
  everySize,
  headsSince,
  type LengthRange,
  lotsTaken,
  medianLength,
  withoutAdults,
} from './taking.ts';
