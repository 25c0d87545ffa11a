/** Everything one answer depends on: plain data of one revision and one date. */
import type { Animal, Kind } from './animals/index.ts';
import type { DayNumber, FeedingCalendar } from './calendar.ts';
import type { Bin, ExpectedDelivery } from './larder/index.ts';
import type { Policy } from './policy.ts';
import type { PreySpecies } from './prey/index.ts';
import type { TempC } from './units.ts';

export interface Room {
  readonly code: string;
  readonly name: string;
  readonly dayTempC: TempC;
  readonly nightTempC: TempC;
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
  readonly calendar: FeedingCalendar;
  /** Weekdays on which a delivery can come, Monday first, and days from order to door. */
  readonly deliveryWeekdays: readonly boolean[];
  readonly leadTimeDays: number;
  readonly facts: Facts;
}
