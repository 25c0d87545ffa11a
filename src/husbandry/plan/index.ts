/** Front door: what to order, harvest, cull and start in the coming weeks, and why. */
export type {
  Estimate,
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
export { makePlan } from './make-plan.ts';
export type { PlanProgress, PlanQuestion, Supposed } from './question.ts';
