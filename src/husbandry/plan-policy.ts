/** Numbers of the method of planning, each sourced. */
import type { Urgency } from './animals/index.ts';
import type { Sourced } from './sourced.ts';

type ByUrgency = Sourced<Readonly<Record<Urgency, number>>>;

export interface PlanPolicy {
  /** Share of due meals that is not to be missed, by urgency. */
  readonly planTargets: ByUrgency;
  /** Price of a meal missed, in times the middle price of an item or its own, whichever is dearer; of an item late for a week, in times its own. */
  readonly planMissedTimes: ByUrgency;
  readonly planLateTimes: Sourced;
  /** Price of an animal past its safe gap, in times the middle price of an item. */
  readonly planDangerTimes: Sourced;
  /** Price of an item given killed first, or beyond a share cap, in times the cheapest item's. */
  readonly planKilledTimes: Sourced;
  readonly planCapTimes: Sourced;
  /** Price of an item by which stock that stands ready falls short for a week. */
  readonly planReadyTimes: Sourced;
  /** What a head left at the end is worth, as a share of the cheapest price of what it saves; weeks it may do so. */
  readonly planEndShare: Sourced;
  readonly planEndWeeks: Sourced;
  /** Weeks of food at which a breeder missing is priced. */
  readonly planBreederWeeks: Sourced;
  /** Share of its room at which a colony is taken to spare most. */
  readonly planBreederRoom: Sourced;
  /** Bands of length a species is cut into; the widest that is left whole. */
  readonly planBands: Sourced;
  readonly planBandRatio: Sourced;
  /** Groups that are planned apart; those most alike are planned as one. */
  readonly planClasses: Sourced;
  /** The same where plans are lived through, which bears more than the programme. */
  readonly planFineBands: Sourced;
  readonly planFineClasses: Sourced;
  /** Growth speeds at which prey is passed from band to band. */
  readonly planSpeeds: Sourced;
  /** A band suits an animal when at least this share of it lies in its window. */
  readonly planBandShare: Sourced;
  /** Replicates of demand; those a plan is judged by, and days of meals that may be worked for it. */
  readonly planReplicates: Sourced;
  readonly planJudgeReplicates: Sourced;
  readonly planJudgeLeast: Sourced;
  readonly planJudgeWork: Sourced;
  /** Weeks a plan is held to its targets: later ones are planned anew before they come. */
  readonly planHeldWeeks: Sourced;
  /** Chances asked of stock that stands ready, in the order in which they are tried. */
  readonly planSafetyLevels: Sourced<readonly number[]>;
  readonly planTries: Sourced;
  /** Periods made whole at a time; share of the cost the plan may be above the best; seconds for each programme. */
  readonly planStride: Sourced;
  readonly planGap: Sourced;
  readonly planSeconds: Sourced;
  /** What rounding may leave of a plan's rows, relative; weeks ahead a rule looks at most. */
  readonly planSlack: Sourced;
  readonly planRuleWeeks: Sourced;
  /** Neighbours of a plan that are tried. */
  readonly planNeighbours: Sourced;
  readonly planQuickTrials: Sourced;
  /** Neighbours tried of the plan that was chosen. */
  readonly planLastTrials: Sourced;
  /** Fates every plan is lived through in while it is searched for, and slices of a lot in them. */
  readonly planFates: Sourced;
  /** The fewest of them, and weeks lived through in all: plans far ahead are lived through in fewer. */
  readonly planFatesLeast: Sourced;
  readonly planFateWeeks: Sourced;
  /** A change dearer in each of so many of them, the worst and the best of the plan as it stands, is not tried in the others. */
  readonly planFirstFates: Sourced;
  readonly planFateSlices: Sourced;
  /** The keeper's minutes for a parcel, a walk to the shop, a harvest and a cup. */
  readonly planParcelMinutes: Sourced;
  readonly planShopMinutes: Sourced;
  readonly planHarvestMinutes: Sourced;
  readonly planStartMinutes: Sourced;
  /** What a cup costs, in cheapest items. */
  readonly planCupItems: Sourced;
  /** Price of keeping a head for a week, as a share of the cheapest price of a head. */
  readonly planKeepShare: Sourced;
  /** A pack is no longer bought for meals of which it can give less than this share. */
  readonly planReachShare: Sourced;
  /** Packs up to which a bulk order is worked out. */
  readonly bulkPacksMost: Sourced;
}
