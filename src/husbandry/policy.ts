/** Numbers of the method itself: priors, bands and limits, each sourced, handed to the core. */
import type { PlanPolicy } from './plan-policy.ts';
import type { Sourced } from './sourced.ts';

export interface Policy extends PlanPolicy {
  /** Monte Carlo replicates of a Sunday check. */
  readonly replicates: Sourced;
  /** Horizon without an expected delivery, days. */
  readonly horizonDays: Sourced;
  /** Chance of nothing missed at or above which the room lasts; and at or above which it is tight. */
  readonly lastsFrom: Sourced;
  readonly tightFrom: Sourced;
  /** Prior chance that an evening is skipped. */
  readonly eveningSkippedChance: Sourced;
  /** Spread (CV) of the keeper's generosity, one draw per replicate. */
  readonly generosityCv: Sourced;
  /** Spread (CV) of the items of one meal about what its rule means, for learning the keeper's generosity. */
  readonly mealItemsCv: Sourced;
  /** Spread (CV) by which it changes over the weeks, so that it is never known exactly. */
  readonly generosityDriftCv: Sourced;
  /** Standard deviation of a room's temperature about its setting, one draw per replicate, degrees C. */
  readonly roomTempSdC: Sourced;
  /** Q10 of the moult cycle and its reference temperature. */
  readonly moultQ10: Sourced;
  readonly moultReferenceC: Sourced;
  /** Degrees that Q10 speaks of: 10. */
  readonly q10StepC: Sourced;
  /** Equal steps of the moult cycle at which acceptance is looked up. */
  readonly acceptancePhases: Sourced;
  /** Moults followed ahead in one forecast. */
  readonly moultsAhead: Sourced;
  /** Equally likely points that tell the distribution of a moult's day. */
  readonly moultPoints: Sourced;
  /** Share of a meal eaten when it was taken in part. */
  readonly partTakenShare: Sourced;
  /** Days looked back on when what an animal eats is weighed, and the least meals that say anything. */
  readonly intakeDays: Sourced;
  readonly intakeMealsNeeded: Sourced;
  /** Refusals in a row are unusual when their chance is below this. */
  readonly refusalsUnusualBelow: Sourced;
  /** Standard deviation of the log of a bin's growth speed. */
  readonly speedLogSd: Sourced;
  /** CV of a bin's hazard multiplier. */
  readonly hazardCv: Sourced;
  /** Chance per bin and day that it dies off, and the share that then dies. */
  readonly dieOffPerDay: Sourced;
  readonly dieOffShare: Sourced;
  /** CV of a count by hand, of a level by eye, of a weight taken for heads by the species' mass, of the scales alone. */
  readonly countCv: Sourced;
  readonly levelCv: Sourced;
  /** Log-sd of what a colony lays over what its species does, before it was counted twice. */
  readonly layingLogSd: Sourced;
  readonly weighCv: Sourced;
  readonly scaleCv: Sourced;
  /** What nobody writes down: standard deviation of the log of a bin's heads over one day, days apart unalike. */
  readonly doubtGrowthPerDay: Sourced;
  /** CV of the length a bin looks to have, seen at a glance. */
  readonly sizeSeenCv: Sourced;
  /** Heads looked at before it is said that no adult is among them. */
  readonly headsLookedAt: Sourced;
  /** Days back from which a bin's record teaches. */
  readonly learnDays: Sourced;
  /** What is seen is not explained by what is known of a bin when its chance is below this. */
  readonly unexplainedBelow: Sourced;
  /** There is too little to learn from while the interval is wider than this share of the first. */
  readonly tooLittleShare: Sourced;
  /** Share of capacity each level by eye stands for. */
  readonly levelShares: Sourced<Readonly<Record<'none' | 'a few' | 'a quarter' | 'half' | 'full', number>>>;
  /** Sellers' over-count, and its CV; share dead on arrival. */
  readonly overCountShare: Sourced;
  readonly overCountCv: Sourced;
  readonly deadOnArrivalShare: Sourced;
  /** Chance a day that an expected delivery is a further day late. */
  readonly deliveryLateChance: Sourced;
  /** Weight of the method's share dead on arrival, in boxes, and of its chance of a late day, in days. */
  readonly lossPriorBoxes: Sourced;
  readonly latePriorDays: Sourced;
  /** Parts by length in which prey taken from one bin comes into another. */
  readonly lotParts: Sourced;
  /** Days new stock is kept apart, and days frozen prey keeps. */
  readonly quarantineDays: Sourced;
  readonly frozenKeepsDays: Sourced;
  /** Slices of equal heads a bin is cut into by size; nodes over growth speed. */
  readonly slices: Sourced;
  readonly speedNodes: Sourced;
  /** Width ratio of the length bands that make demand groups. */
  readonly groupBandRatio: Sourced;
  /** Most prey items of less than ideal size that replace one of ideal size. */
  readonly smallerItemsMost: Sourced;
  /** Intervals on record needed before the animal's own replace the kind's, and the kind's weight in intervals. */
  readonly intervalsNeeded: Sourced;
  readonly intervalPriorWeight: Sourced;
  /** Weight of the kind's acceptance, in offers. */
  readonly acceptancePriorWeight: Sourced;
  /** The ruler of the size spectrum: least and greatest length, mm, and bands. */
  readonly rulerFromMm: Sourced;
  readonly rulerToMm: Sourced;
  readonly rulerBands: Sourced;
  /** Weeks shown after this one, and replicates they are played through. */
  readonly weeksAhead: Sourced;
  readonly aheadReplicates: Sourced;
  /** Replicates whose stock by day is kept for a cover line. */
  readonly stockReplicates: Sourced;
  /** Replicates in which each possible act is tried before the best is judged in full. */
  readonly actReplicates: Sourced;
  /** Neediest groups for whom acts are tried. */
  readonly actGroups: Sourced;
  /** Standard errors of a tie by chance that the tie of a bin's count to missed meals must pass to be named. */
  readonly lookTieErrors: Sourced;
  /** Degrees by which a bin is moved to a cooler or warmer place. */
  readonly moveByC: Sourced;
  /** Published temperatures of a span from which each is foretold from the others. */
  readonly leaveOneOutPoints: Sourced;
  /** Heads in a tub from a local shop. */
  readonly shopPackHeads: Sourced;
  /** Days ahead in which the next evening is looked for. */
  readonly nextEveningDays: Sourced;
  /** Refusals in a row from which an animal is to be looked at. */
  readonly refusalsAsked: Sourced;
  /** Days back to which an evening may still be written down. */
  readonly roundBackDays: Sourced;
  /** A count is asked for from this doubt (CV) and this age on, and when an evening took this share of a bin. */
  readonly askCountCv: Sourced;
  readonly askCountDays: Sourced;
  readonly askCountShare: Sourced;
  /** Offers on record and the share taken below which an animal is known to leave food. */
  readonly seldomTakesOffers: Sourced;
  readonly seldomTakesShare: Sourced;
  /** Hours within which prey not taken comes out. */
  readonly leftoversOutHours: Sourced;
  /** Animals named as touched in one group. */
  readonly touchedNamed: Sourced;
  /** Days kept between the keeper's return and the end of an animal's safe gap, for a journey or a meal that goes wrong. */
  readonly awayMarginDays: Sourced;
  /** Days ahead up to which the larder is followed evening by evening for a sitter. */
  readonly awayFollowedDays: Sourced;
  /** Replicates of a hatch wave; fewer where heads x days x replicates would pass its work. */
  readonly waveReplicates: Sourced;
  readonly waveReplicatesLeast: Sourced;
  readonly waveWork: Sourced;
  /** Weeks shown after the latest first feed, and at most altogether. */
  readonly waveWeeksAfter: Sourced;
  readonly waveWeeksMost: Sourced;
  /** Share of losses that take every line of one room or origin at once. */
  readonly lineSharedShare: Sourced;
  /** Weeks for which cups are planned. */
  readonly cupWeeks: Sourced;
  /** A colony sustains a harvest that is met in this share of weeks, over so many years, with this chance. */
  readonly colonyWeeksMet: Sourced;
  readonly colonyYears: Sourced;
  readonly colonyChance: Sourced;
  /** Replicates of a colony in whole animals, and the greatest colony tried, in times the smallest by means. */
  readonly colonyReplicates: Sourced;
  readonly colonyMostTimes: Sourced;
  /** Most breeders followed as whole animals; a larger colony is judged by an equal part. */
  readonly colonyWholeMost: Sourced;
  /** Days looked ahead after a crash; and the rise of a group's chance to run out that is told. */
  readonly crashDays: Sourced;
  readonly crashRise: Sourced;
  /** Weeks a bin is followed by itself on its page, and replicates of that. */
  readonly binWeeks: Sourced;
  readonly binReplicates: Sourced;
  /** Days for which a cull makes room. */
  readonly cullDays: Sourced;
}
