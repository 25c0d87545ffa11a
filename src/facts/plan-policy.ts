/** Numbers of the method of planning, as the product ships them. */
import type { PlanPolicy } from '../husbandry/plan-policy.ts';
import { memory } from './sourced.ts';

const CHOICE = 'our choice';
const TIMES = 'times the cheapest item';

export const planPolicy: PlanPolicy = {
  planTargets: memory({ fragile: 0.995, ordinary: 0.98, robust: 0.95 }, 'share of due meals', CHOICE),
  planMissedTimes: memory(
    { fragile: 20, ordinary: 6, robust: 3 },
    'times the middle price of an item, a meal',
    'our choice: at the first chance of ready stock; dearer ones follow where a target is missed',
  ),
  planDangerTimes: memory(200, 'times the middle price of an item', CHOICE),
  planLateTimes: memory(0.5, `${TIMES}, a week`, CHOICE),
  planKilledTimes: memory(0.05, TIMES, 'our choice: live prey of the right size is better'),
  planCapTimes: memory(0.5, TIMES, CHOICE),
  planReadyTimes: memory(5, `${TIMES}, a week`, CHOICE),
  planEndShare: memory(0.9, '1', 'our choice: below the cheapest price, or buying for the end would pay'),
  planEndWeeks: memory(4, 'weeks', CHOICE),
  planBands: memory(10, 'bands', CHOICE),
  planBandRatio: memory(1.25, 'longest over shortest', CHOICE),
  planClasses: memory(16, 'groups', CHOICE),
  planFineBands: memory(20, 'bands', CHOICE),
  planFineClasses: memory(24, 'groups', CHOICE),
  planSpeeds: memory(5, 'speeds', CHOICE),
  planBandShare: memory(0.5, '1', CHOICE),
  planReplicates: memory(200, 'replicates', CHOICE),
  planJudgeReplicates: memory(200, 'replicates', CHOICE),
  planJudgeLeast: memory(40, 'replicates', CHOICE),
  planJudgeWork: memory(600_000, 'animal-days', CHOICE),
  planHeldWeeks: memory(6, 'weeks', CHOICE),
  planSafetyLevels: memory([0.85, 0.95, 0.99, 0.7], 'chance', 'our choice: the first is tried first'),
  planTries: memory(3, 'chances', CHOICE),
  planSlack: memory(1e-5, '1', 'the solver keeps its rows to 1e-6'),
  planRuleWeeks: memory(4, 'weeks', CHOICE),
  planStride: memory(2, 'periods', CHOICE),
  planGap: memory(0.01, 'share of the cost', CHOICE),
  planSeconds: memory(10, 'seconds', CHOICE),
  planNeighbours: memory(1200, 'plans', CHOICE),
  planFates: memory(24, 'fates', CHOICE),
  planFirstFates: memory(6, 'fates', 'our choice: the three worst and the three best'),
  planFateSlices: memory(6, 'slices', CHOICE),
  planQuickTrials: memory(3000, 'plans', CHOICE),
  planParcelMinutes: memory(20, 'minutes', 'our choice: ordering, unpacking, counting'),
  planShopMinutes: memory(45, 'minutes', CHOICE),
  planHarvestMinutes: memory(10, 'minutes', CHOICE),
  planStartMinutes: memory(10, 'minutes', CHOICE),
  planCupItems: memory(20, 'cheapest items', 'our choice: medium and cup'),
  planKeepShare: memory(
    0.01,
    'share of a head a week',
    'our choice: feed; and sooner is not better than later',
  ),
  planReachShare: memory(0.1, '1', CHOICE),
  bulkPacksMost: memory(60, 'packs', CHOICE),
};
