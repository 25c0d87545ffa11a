/** Everything one answer depends on: plain data of one revision and one date. */
import type { Animal, Kind } from './animals/index.ts';
import type { DayNumber, DayRange, FeedingCalendar } from './calendar.ts';
import type { Bin, ExpectedDelivery } from './larder/index.ts';
import type { Market } from './orders/index.ts';
import type { Policy } from './policy.ts';
import type { PreySpecies } from './prey/index.ts';
import type { TempC } from './units.ts';

export interface Room {
  readonly code: string;
  readonly name: string;
  readonly dayTempC: TempC;
  readonly nightTempC: TempC;
  /** Measured, where the keeper read in a series; on all other days day and night temperature hold. */
  readonly series?: TempSeries | null;
}

/** Least and greatest temperature of each day from one on; null on a day without a reading. */
export interface TempSeries {
  readonly from: DayNumber;
  readonly minC: readonly (TempC | null)[];
  readonly maxC: readonly (TempC | null)[];
}

/** What is known of a sac (or an ootheca, a clutch, a birth); null where it has not come to that. */
export interface SacRecord {
  /** Laid on one of these days. */
  readonly laid: DayRange | null;
  /** Taken from the mother. */
  readonly pulled: DayNumber | null;
  readonly hatched: DayNumber | null;
  /** The young were counted, not guessed. */
  readonly counted: boolean;
  /** First feed: the young have become a group of their own. */
  readonly settled: DayNumber | null;
  readonly ended: { readonly how: 'dud' | 'eaten'; readonly day: DayNumber } | null;
  /** Share of the young that stays here, 0 to 1. */
  readonly shareKept: number;
  /** The mother takes no food on these days. */
  readonly motherFasts: DayRange | null;
}

/** A change the keeper plans or expects: a sac, arrivals, sales. */
export interface PlannedChange {
  readonly code: string;
  readonly kind: 'sac' | 'arrival' | 'sale';
  readonly animalKind: string;
  /** First and last day it may happen; a sac: the first feed of its young. */
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** Chance that it happens at all, 0 to 1. */
  readonly chance: number;
  readonly count: number;
  readonly gaugeMm: number;
  readonly room: string;
  /** The animal concerned: the mother of a sac, the animal sold. */
  readonly animal: string | null;
  /** Of a sac whose dates the keeper follows; absent or null for all else. */
  readonly sac?: SacRecord | null;
}

/** Kinds, species and policy by code, handed to the core as arguments. */
export interface Facts {
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly species: ReadonlyMap<string, PreySpecies>;
  readonly policy: Policy;
}

export interface Snapshot {
  readonly today: DayNumber;
  /** Counts every change of the keeper's facts. */
  readonly revision: number;
  readonly seed: number;
  readonly animals: readonly Animal[];
  readonly bins: readonly Bin[];
  readonly deliveries: readonly ExpectedDelivery[];
  readonly changes: readonly PlannedChange[];
  readonly rooms: readonly Room[];
  /** Rooms no longer in use, for bins that stood there once. */
  readonly removedRooms?: readonly Room[];
  readonly calendar: FeedingCalendar;
  /** Weekdays on which a delivery can come, Monday first, and days from order to door. */
  readonly deliveryWeekdays: readonly boolean[];
  readonly leadTimeDays: number;
  /** Until when bins are left alone in a plan, by code; Infinity: whoever goes without; absent: as the keeper has it. */
  readonly leftAlone?: ReadonlyMap<string, DayNumber>;
  /** Who sells prey; absent: nobody yet. */
  readonly market?: Market;
  readonly facts: Facts;
}
