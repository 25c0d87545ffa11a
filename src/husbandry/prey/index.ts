/** Front door: prey species, their rates, and which prey suits which animal. */
export { type LeftOut, leaveOneOut } from './leave-one-out.ts';
export { itemsWorth, type LengthWindow, meanCube, suitability, takesDead, windowFor } from './matching.ts';
export { type DayTemp, developmentOnDay, meanOfDay, rateCurve } from './rate.ts';
export type {
  Brood,
  ColdStore,
  Crowding,
  DevelopmentPoint,
  DevelopmentSpan,
  Eaten,
  Laying,
  PreyCaution,
  PreySpecies,
  PreyStage,
  SizeClass,
  StageKind,
  SurvivalPoint,
} from './species.ts';
export { sizeWord, type TradeSizes, tradeSizes } from './trade-sizes.ts';
export { widestWindow } from './widest-window.ts';
