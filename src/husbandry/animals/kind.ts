/** Kinds of animals and their feeding rules by life stage: data, not code. */
import type { PreyForm } from '../prey-form.ts';
import type { Sourced } from '../sourced.ts';
import type { Mm } from '../units.ts';

export type KindGroup =
  | 'tarantula'
  | 'true spider'
  | 'jumping spider'
  | 'scorpion'
  | 'mantid'
  | 'centipede'
  | 'whip spider'
  | 'frog'
  | 'lizard';

export type LifeStage = 'young' | 'juvenile' | 'subadult' | 'adult' | 'mature male';
export type Urgency = 'fragile' | 'ordinary' | 'robust';
export type CautionCode = 'venom' | 'urticating hairs' | 'live prey near a moult' | 'escape' | 'regulated';

/** Which prey fits, as shares of the reference length (body length; for frogs and lizards see `gape`). */
export interface PreyWindow {
  readonly min: number;
  readonly ideal: number;
  /** Longest live or killed prey taken whole. */
  readonly max: number;
  /** Prey longer than this share must be killed or crushed first; null when live prey is fine up to max. */
  readonly killFirstAbove: number | null;
}

/** Limits of animals that swallow prey whole: prey width against the head, and a cap on prey mass. */
export interface GapeLimit {
  /** Head width as a share of the reference length. */
  readonly headWidthShare: Sourced;
  /** Prey width at most this share of head width. */
  readonly widthMaxOfHead: Sourced;
  /** One prey item at most this share of the animal's own mass; null when not limited. */
  readonly massMaxShare: Sourced | null;
}

/** Acceptance of an offered meal between two points of the moult cycle (0 = moulted, 1 = next moult). */
export interface AcceptancePhase {
  readonly from: number;
  readonly to: number;
  readonly acceptance: number;
}

export interface MoultCycle {
  /** Mean days from moult to moult at the reference temperature, fed to schedule. */
  readonly meanDays: Sourced;
  readonly cv: Sourced;
  /** Body length after a moult over length before. */
  readonly lengthFactor: Sourced;
}

export interface StageRule {
  readonly stage: LifeStage;
  /** What keepers call the stage in this kind: 'spiderling', 'sling', 'nymph', 'froglet' ... first is shown. */
  readonly words: readonly string[];
  /** The stage begins at this share of the adult gauge. */
  readonly fromShareOfAdult: number;
  readonly window: Sourced<PreyWindow>;
  readonly gape: GapeLimit | null;
  /** Whole prey items of the ideal size per meal, least and most. */
  readonly mealItems: Sourced<readonly [number, number]>;
  /** Days between accepted meals, least and most. */
  readonly intervalDays: Sourced<readonly [number, number]>;
  /** Prey killed per week over own mass, the range that is right for this stage. */
  readonly weeklyNeed: Sourced<readonly [number, number]>;
  /** null: this stage moults no more. */
  readonly moult: MoultCycle | null;
  /** Nothing is offered for this many days after a moult. */
  readonly waitAfterMoultDays: Sourced;
  /** Days until prey is offered again after a refusal. */
  readonly retryDays: Sourced;
  readonly acceptance: Sourced<readonly AcceptancePhase[]>;
  /** A late meal is missed when it is later than the range plus this. */
  readonly graceDays: Sourced;
  /** Longer without food is a danger. */
  readonly safeGapDays: Sourced;
  readonly urgency: Urgency;
  readonly accepts: readonly PreyForm[];
  /** Most of a week's prey items from one form, share; forms not named have no cap. */
  readonly shareCaps: Sourced<Readonly<Partial<Record<PreyForm, number>>>>;
  /** Whether hard-bodied beetles are refused or unsafe. */
  readonly refusesHard: boolean;
  /** Larger prey may be cut into at most this many portions; 1 = not cut. */
  readonly portions: Sourced;
}

export interface Kind {
  readonly code: string;
  /** The kind of the Book that this one, of the keeper's own, was made from. */
  readonly madeFrom?: string;
  /** Scientific name, or the group's name for a general kind. */
  readonly name: string;
  readonly commonName: string;
  readonly aliases: readonly string[];
  readonly group: KindGroup;
  readonly habit: string;
  /** What the keeper measures: 'diagonal leg span', 'body length', ... */
  readonly gauge: string;
  /** Reference body length (trunk for scorpions, snout-vent for frogs and lizards) over gauge. */
  readonly bodyPerGauge: Sourced;
  /** The same for a mature male, where it differs. */
  readonly bodyPerGaugeMale: Sourced | null;
  /** Live mass in mg = coefficient x (reference length in mm)^3. */
  readonly massPerCubicMm: Sourced;
  readonly adultGaugeMm: Sourced<readonly [Mm, Mm]>;
  readonly firstFeedingGaugeMm: Sourced<readonly [Mm, Mm]>;
  /** Smallest stage first; 'mature male' last where it exists and is entered only by being matured. */
  readonly stages: readonly StageRule[];
  readonly cautions: readonly CautionCode[];
}
