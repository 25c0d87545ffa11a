/** What the core needs to know of a prey species: a chain of stages, its growth, its spread and its losses. */

import type { PreyForm } from '../prey-form.ts';
import type { Sourced } from '../sourced.ts';
import type { Mm, TempC } from '../units.ts';

export type StageKind = 'egg' | 'young' | 'pupa' | 'adult';

/** Mean days that survivors spend at one constant temperature. */
export interface DevelopmentPoint {
  readonly tempC: TempC;
  readonly days: number;
}

/** A stretch of development measured as one, with its rate curve (model: rate through the points, degree-day line elsewhere). */
export interface DevelopmentSpan {
  readonly code: string;
  /** Fitted lower threshold, where the rate reaches 0. */
  readonly lowerThresholdC: Sourced;
  /** Thermal constant above the threshold, degree-days. */
  readonly degreeDays: Sourced;
  /** Published durations of the whole span; the rate curve goes through them. */
  readonly points: Sourced<readonly DevelopmentPoint[]>;
  readonly optimumC: Sourced;
  /** Where development ends in the heat. */
  readonly upperStopC: Sourced;
  /** Nobody gets through this span when the mean of seven days is at or below this. */
  readonly hardStopC?: Sourced;
}

/** Survival through a stage at one constant temperature. */
export interface SurvivalPoint {
  readonly tempC: TempC;
  readonly share: number;
}

export interface PreyStage {
  readonly name: string;
  readonly kind: StageKind;
  /** Code of the span this stage belongs to; adults have their own durations instead. */
  readonly span: string;
  /** Share of the span's duration spent in this stage; shares of one span sum to 1. */
  readonly share: number;
  /** Share of those entering that leave alive, by temperature. */
  readonly survival: Sourced<readonly SurvivalPoint[]>;
  /** Spread (CV) of the time in this stage where it was measured. */
  readonly cv?: Sourced;
  /** Whether keepers feed this stage. */
  readonly fed: boolean;
}

/** Adult life: mean days by temperature and spread; every exit is a death. */
export interface AdultLife {
  readonly longevity: Sourced<readonly DevelopmentPoint[]>;
  readonly cv: Sourced;
  /** Whether keepers feed adults. */
  readonly fed: boolean;
}

export interface Laying {
  /** Mean eggs (or live young) per adult female and day, by temperature; straight lines between, 0 outside lower threshold and upper stop. */
  readonly perFemaleDay: Sourced<readonly { readonly tempC: TempC; readonly perDay: number }[]>;
  /** Days from adult moult to the first eggs or young. */
  readonly firstAfterDays: Sourced;
  readonly femaleShare: Sourced;
  /** Share of eggs that hatch; 1 for species that bear live young. */
  readonly hatchShare: Sourced;
  /** Laying over adult life: [share of the mean time as a laying adult, rate over the mean rate], straight between; absent: even. */
  readonly byAge?: Sourced<readonly (readonly [number, number])[]>;
  /** What comes at once, where young come in broods or oothecae: perFemaleDay is their size over their interval. */
  readonly brood?: Brood;
  /** Days of adult life after which keepers replace breeders. */
  readonly retireAfterDays?: Sourced;
  /** Females one male serves, where keepers take surplus males out. */
  readonly femalesPerMale?: Sourced;
}

export interface Brood {
  readonly young: Sourced;
  readonly youngCv: Sourced;
  /** Days between broods of one female at `tempC`. */
  readonly intervalDays: Sourced;
  readonly tempC: TempC;
}

/** What holds heads in check as they get many. */
export interface Crowding {
  /** What there is too little of: surface, volume or medium. */
  readonly by: 'area' | 'volume' | 'medium';
  /** Heads of adult size that one unit carries: per dm2 of surface, per litre, per gram of medium. */
  readonly headsPerUnit: Sourced;
  /** Deaths per head and day for each capacity by which the load exceeds the capacity: mu_c in mu_c (load/capacity - 1). */
  readonly deathsPerDayOver: Sourced;
  /** Who eats whom, where it was measured. */
  readonly eaten?: readonly Eaten[];
}

/** Survival through a stage is exp(-c x eaters per gram of medium). */
export interface Eaten {
  readonly stage: 'egg' | 'pupa';
  readonly by: 'young' | 'adult';
  /** c, gram of medium per eater. */
  readonly perEater: Sourced;
}

/** Keeping prey slow in the cold. */
export interface ColdStore {
  readonly fromC: Sourced;
  readonly toC: Sourced;
  /** Longest that was seen or is advised, days. */
  readonly days: Sourced;
  /** Below this it harms. */
  readonly harmBelowC: Sourced;
}

/** What a keeper of the species must mind; a sentence with its source. */
export interface PreyCaution {
  readonly about: 'escape' | 'regulated' | 'allergy' | 'virus' | 'bites' | 'wild-caught';
  readonly text: Sourced<string>;
}

/** A culture in a cup of finite medium. */
export interface CupLife {
  readonly starters: Sourced;
  /** Flies one cup raises over its life. */
  readonly yieldPerCup: Sourced;
  /** Age at which it goes out, days. */
  readonly discardAfterDays: Sourced;
}

/** A size the trade sells, by body length. */
export interface SizeClass {
  readonly name: string;
  /** Other words keepers use for it, such as 'medium'. */
  readonly aliases?: readonly string[];
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

export interface PreySpecies {
  readonly code: string;
  /** Scientific name. */
  readonly name: string;
  readonly commonName: string;
  /** Other words keepers write for it, lower case. */
  readonly aliases: readonly string[];
  readonly form: PreyForm;
  /** Live mass in mg = coefficient x (length in mm)^3. */
  readonly massPerCubicMm: Sourced;
  /** Greatest width of the live animal as a share of its length. */
  readonly widthPerLength: Sourced;
  readonly spans: readonly DevelopmentSpan[];
  /** Immature stages in order, egg first. */
  readonly stages: readonly PreyStage[];
  /** Spread (coefficient of variation) of the time from hatch to adult among siblings. */
  readonly immatureCv: Sourced;
  /** Body length by share of the time from hatch to adult: [share, mm], share 0 to 1, increasing. */
  readonly lengthByDevelopment: Sourced<readonly (readonly [number, Mm])[]>;
  readonly adultLengthMm: Sourced;
  readonly adult: AdultLife;
  readonly laying: Laying | null;
  readonly cup: CupLife | null;
  readonly crowding?: Crowding;
  readonly coldStore?: ColdStore;
  /** Larvae become pupae only when kept alone: in a holding bin they stay larvae. */
  readonly pupatesAlone?: boolean;
  readonly cautions?: readonly PreyCaution[];
  readonly sizeClasses: Sourced<readonly SizeClass[]>;
  /** Share lost per day in a holding bin, all sizes. */
  readonly holdingLossPerDay: Sourced;
  readonly traits: {
    readonly hard: boolean;
    /** Bites: unsafe beside a moulting animal. */
    readonly bites: boolean;
  };
  /** Where sources disagree, or what a reader must know; shown in the Book. */
  readonly notes: readonly string[];
}
