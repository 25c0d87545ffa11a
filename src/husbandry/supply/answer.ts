/** The answer to the Sunday question, in full: what lasts, what runs short, when, how sure, and what helps. */
import type { Urgency } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Belief } from '../larder/index.ts';
import type { Mm } from '../units.ts';

/** lasts: nothing missed with a chance of at least 95 %; tight: 80-95 %; runs short: below; empty: nobody to feed. */
export type Verdict = 'lasts' | 'tight' | 'runs short' | 'empty';

/** 5, 50 and 95 % quantiles over replicates. */
export interface Spread {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** A share of replicates with its Monte Carlo standard error. */
export interface Chance {
  readonly chance: number;
  readonly standardError: number;
}

/** Expected number over the horizon, per replicate; missed meals and dangers are those for want of prey. */
export interface Shortfall {
  readonly lateMeals: number;
  readonly missedMeals: number;
  /** Animals that pass their safe gap without food. */
  readonly dangers: number;
}

export interface GroupAnswer extends Shortfall {
  readonly key: string;
  /** Such as 'spiderlings' ; with the prey length it reads 'spiderlings that take 2-4 mm'. */
  readonly name: string;
  readonly urgency: Urgency;
  readonly window: {
    readonly minMm: Mm;
    readonly idealMm: Mm;
    readonly killFirstAboveMm: Mm | null;
    readonly maxMm: Mm;
  };
  /** Codes of the prey species this group takes. */
  readonly species: readonly string[];
  readonly animals: readonly string[];
  readonly heads: number;
  readonly verdict: Verdict;
  readonly nothingMissed: Chance;
  readonly mealsDue: number;
  /** Prey items of the ideal size wanted over the horizon. */
  readonly itemsWanted: Spread;
  readonly itemsWantedMean: number;
  /** First day on which a due meal finds no fitting prey; null when that never happened. */
  readonly runOut: { readonly chance: number; readonly day: Spread | null };
  readonly daysOfCover: Spread;
  /** Animals likeliest to miss a meal, with that chance, highest first. */
  readonly touched: readonly { readonly animal: string; readonly chance: number }[];
  /** By day of the horizon, means in items of the ideal size. */
  readonly wantedByDay: readonly number[];
  readonly unmetByDay: readonly number[];
  /** Heads alive that this group could eat, by day: 5, 50, 95 %. */
  readonly stockByDay: readonly Spread[];
}

export interface BinAnswer {
  readonly code: string;
  readonly name: string;
  readonly species: string;
  readonly headsNow: Spread;
  /** Days since somebody counted or looked, or since it came; null when never. */
  readonly lookedDaysAgo: number | null;
  /** First day on which it is fed from again, where it is left alone. */
  readonly restsUntil: DayNumber | null;
  readonly eaten: number;
  readonly died: number;
  readonly arrived: number;
  readonly hatched: number;
  readonly left: number;
  /** Alive at the end and too large for every animal here. */
  readonly outgrown: number;
  readonly lengthsNow: Spread;
  readonly learned: BinLearned;
}

/** What the record of a bin has taught, beside the published growth speed and hazard, which are 1. */
export interface BinLearned extends Pick<Belief, 'speed' | 'hazard' | 'evidence' | 'looks'> {
  /** What a colony lays over what its species does; null until a count could tell. */
  readonly laying: Belief['speed'] | null;
}

export type ActKind =
  | 'bring delivery forward'
  | 'enlarge delivery'
  | 'buy at a shop'
  | 'harvest a colony'
  | 'start a cup'
  | 'cut prey'
  | 'move to a cooler place'
  | 'move to a warmer place'
  | 'stretch adults';

export interface Act {
  readonly kind: ActKind;
  /** What to do, as the keeper would say it. */
  readonly sentence: string;
  readonly bin: string | null;
  readonly species: string | null;
  readonly animals: readonly string[];
  readonly before: Shortfall & { readonly nothingMissed: number };
  readonly after: Shortfall & { readonly nothingMissed: number };
}

/** One ruler of prey length: what is alive above, what will be eaten below, what is wanted and not there. */
export interface Spectrum {
  /** Edges of the length bands, one more than bands. */
  readonly edgesMm: readonly Mm[];
  readonly alive: readonly { readonly species: string; readonly heads: readonly number[] }[];
  readonly eaten: readonly number[];
  readonly missing: readonly number[];
}

export interface CoverAnswer extends Shortfall {
  readonly day: DayNumber;
  readonly horizonDays: number;
  /** The delivery that ends the horizon, if one is expected. */
  readonly untilDelivery: string | null;
  readonly seed: number;
  readonly replicates: number;
  readonly revision: number;
  readonly verdict: Verdict;
  /** The verdict in about ten words. */
  readonly headline: string;
  readonly nothingMissed: Chance;
  readonly mealsDue: number;
  /** Items the keeper gives over those the rules mean, and the meals on record that say so. */
  readonly given: Spread & { readonly meals: number };
  /** What goes wrong though prey is there, because nobody feeds: evenings skipped, absences, feeding days too far apart. */
  readonly unfed: { readonly missedMeals: number; readonly dangers: number };
  readonly groups: readonly GroupAnswer[];
  readonly bins: readonly BinAnswer[];
  readonly act: Act | null;
  /** The bin whose count would narrow the doubt most. */
  readonly look: { readonly bin: string; readonly sentence: string } | null;
  readonly spectrum: Spectrum;
}
