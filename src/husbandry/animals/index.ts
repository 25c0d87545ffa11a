/** Front door: animals, their kinds and stages. */
export { type Animal, NOTHING_ON_RECORD, type Outcome, type Sex } from './animal.ts';
export type {
  AcceptancePhase,
  CautionCode,
  GapeLimit,
  Kind,
  KindGroup,
  LifeStage,
  MoultCycle,
  StageRule,
  Urgency,
} from './kind.ts';
export {
  type Changed,
  type ChangedKind,
  type KindChanges,
  type KindField,
  type KindValues,
  NOTHING_CHANGED,
  type Own,
  type ShareCaps,
  type StageField,
  type StageValues,
} from './own-values.ts';
export { adultGauge, type Eater, eaterOf, moults, ruleOf } from './stage.ts';
export { tooLarge } from './too-large.ts';
export { kindValues, stageValues } from './values.ts';
