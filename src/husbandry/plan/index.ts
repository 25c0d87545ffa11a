/** Front door: what to order, harvest, cull, start and leave alone in the coming weeks, and why. */
export type { Estimate } from '../../maths/estimate.ts';
export type {
  GroupCover,
  Obstacle,
  ObstacleKind,
  Period,
  PlanAnswer,
  PlanLine,
  Reason,
  Service,
  Whole,
  Wish,
} from './answer.ts';
export type { BulkAnswer, BulkCurve, BulkNone, BulkPoint, BulkQuestion, BulkWeek } from './bulk-answer.ts';
export { bulkOrder } from './bulk-order.ts';
export { cullKey } from './culls.ts';
export { type Decided, decidedIn } from './likeness.ts';
export { makePlan } from './make-plan.ts';
export type { PlanProgress, PlanQuestion, Supposed } from './question.ts';
export { restKey } from './rests.ts';
export { feedsOf, headsOf, isTakenOut, type PlanStep, stepsOf, type TakenOut } from './steps.ts';
export { sundaySteps } from './sunday-steps.ts';
export { staying, supposing } from './supposing.ts';
