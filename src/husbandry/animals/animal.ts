/** An animal, or a group of n alike that live and are fed together. */
import type { DayNumber, DayRange } from '../calendar.ts';
import type { Mm } from '../units.ts';
import type { LifeStage } from './kind.ts';

export type Sex = 'male' | 'female' | 'unsexed';
export type Outcome = 'offered' | 'taken' | 'part-taken' | 'refused' | 'taken (assumed)';

/** The last moult on record: it lies between the last day seen unmoulted and the day found. */
export interface MoultSeen {
  readonly earliest: DayNumber;
  readonly found: DayNumber;
}

/** What stands of an animal of which nothing is written down. */
export const NOTHING_ON_RECORD = {
  lastOffered: null,
  lastOutcome: null,
  lastTaken: null,
  lastMoult: null,
  premoultSeen: null,
  intervalsOnRecord: [],
  offersOnRecord: 0,
  takenOnRecord: 0,
  refusalsInRow: 0,
  givenOnRecord: { meals: 0, items: 0 },
} as const;

export interface Animal {
  /** Stable short code, never reused. */
  readonly code: string;
  readonly name: string;
  readonly kind: string;
  /** Heads in this record: 1 for one animal. */
  readonly count: number;
  readonly sex: Sex;
  /** 'mature male' is entered only by an event; other stages follow from the gauge. */
  readonly matured: boolean;
  readonly gaugeMm: Mm;
  /** The gauge was not measured but taken from the stage. */
  readonly gaugeAssumed: boolean;
  readonly room: string;
  readonly shelf: string;
  /** Last day prey was offered, and what became of it; null when never recorded. */
  readonly lastOffered: DayNumber | null;
  readonly lastOutcome: Outcome | null;
  /** Last day prey was taken; null when never recorded. */
  readonly lastTaken: DayNumber | null;
  readonly lastMoult: MoultSeen | null;
  readonly premoultSeen: DayNumber | null;
  /** Days between accepted meals on record, oldest first, newest last. */
  readonly intervalsOnRecord: readonly number[];
  /** Offers and acceptances outside premoult and wait, for learning. */
  readonly offersOnRecord: number;
  readonly takenOnRecord: number;
  /** Evenings refused since it last took prey or moulted; 0 when the last was taken. */
  readonly refusalsInRow: number;
  /** Whole meals written down since it has the size it has now, and the items of the ideal size they came to. */
  readonly givenOnRecord: { readonly meals: number; readonly items: number };
  readonly stageOverride: LifeStage | null;
  /** Takes no food on these days, as the keeper said: it guards a sac. */
  readonly fasts?: DayRange | null;
}
