/** Front door: animals, their kinds and stages. */
export type { Animal, Outcome, Sex } from './animal.ts';
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
export { adultGauge, type Eater, eaterOf, ruleOf } from './stage.ts';
