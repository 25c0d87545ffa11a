/** Front door: colonies for harvest: how many breeders, the way there from a few starters, what to cull. */
export { type BinOutlook, binOutlook, type ColonyTakes } from './bin-outlook.ts';
export type { Wanted } from './breeding.ts';
export { type ColonyQuestion, colonyAmiss } from './colony-question.ts';
export { type ColonyAnswer, type ColonyStart, colonyStart } from './colony-start.ts';
export type { Costs, Prices } from './costs.ts';
export { type Cull, type CullsAsked, cullsAhead } from './culls.ts';
export {
  type HarvestAnswer,
  type HarvestQuestion,
  type LargestHarvest,
  largestHarvests,
} from './largest-harvests.ts';
export type { BinSize, Starters, StartWeek } from './start-path.ts';
export type { Sustained } from './sustains.ts';
