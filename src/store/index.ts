/** The store's front door. */
export {
  type Act,
  type ActBody,
  type ActMark,
  actNumbered,
  actOfForm,
  actsChanging,
  actsNumbered,
  addAct,
  latestActs,
  type Puts,
  revision,
} from './acts.ts';
export { type ArrivedLine, arrivalsUpTo, arrivedLines, spentBetween } from './arrivals.ts';
export { backupsOf, newestGoodBackup } from './backup.ts';
export { anyChangedSince, changedSince } from './changed-since.ts';
export { isFile } from './connection.ts';
export { nextCodes } from './counters.ts';
export { demoIsHere } from './demo.ts';
export { draftNamed, keepDraft } from './drafts.ts';
export {
  type EntryDetails,
  type EntryInput,
  lastMealTaken,
  lastSeenUnmoulted,
  type MealOutcome,
  moultedSince,
  type OfferLine,
  offersOf,
  openEvening,
  openEvenings,
  roundDone,
} from './entries.ts';
export { type EveningLine, eveningLines } from './evening.ts';
export { type DeathInGroup, deathsInGroups, deathsOnRecord, type Leaving, leavings } from './gone.ts';
export { type ActAbout, actsAbout, type EntryLine, type RowChange } from './history.ts';
export { type Keeping, keepAnswer, keptAnswer, lastKept } from './kept.ts';
export { type LifeRows, lifeOf, type MealRow } from './lives.ts';
export { type AnimalMark, animalMarks } from './marks.ts';
export { NAMING } from './naming.ts';
export type {
  AnimalRow,
  BinRow,
  DeliveryRow,
  Noun,
  OfferRow,
  PlannedChangeRow,
  PurchaseRow,
  RoomRow,
  Rows,
  SettingRow,
  SupplierRow,
} from './nouns.ts';
export { nameOf, nouns } from './nouns.ts';
export { outcomesBefore } from './offers-before.ts';
export { openStore } from './open.ts';
export type { Query, Tx } from './query.ts';
export {
  type AnimalRecord,
  animalRecords,
  type BinEventRow,
  binEvents,
  type LotBrought,
  lotsBrought,
  OFFERS_READ,
} from './records.ts';
export { restingUpon, withResting } from './rests-on.ts';
export { rowNamed, rowsNamed, rowsOf } from './rows.ts';
export * from './sessions.ts';
export { type Settings, settings } from './settings.ts';
export { enteredOn } from './since.ts';
export {
  actsOfEvening,
  EVENING_VERBS,
  type RoundCount,
  roundCount,
  type Sought,
  stepsDone,
  undosOf,
} from './steps.ts';
export type { Store } from './store.ts';
export { inOrder } from './turns.ts';
export { actsToUndo, isUndo, undoAct, undoTogether } from './undo.ts';
