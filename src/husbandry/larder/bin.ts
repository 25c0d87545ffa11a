/** A bin holds prey of one species: a holding bin, a breeding colony or a fly cup. */
import type { DayNumber } from '../calendar.ts';
import type { Mm } from '../units.ts';

export type BinRole = 'holding' | 'colony' | 'cup';
/** How full a bin looks. */
export type Level = 'none' | 'a few' | 'a quarter' | 'half' | 'full';
/** What can be seen of a cup. */
export type CupLook = 'started' | 'larvae' | 'producing' | 'slow' | 'finished' | 'crashed' | 'mites';

/** Prey of one age and size that came together. */
export interface Lot {
  readonly heads: number;
  /** Body lengths on the day, least and most. */
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** What was seen of or done to a bin on one civil day, in the order written. */
export type BinEvent = { readonly day: DayNumber } & (
  | { readonly kind: 'delivered'; readonly lot: Lot; readonly dead: number }
  | { readonly kind: 'counted'; readonly heads: number; readonly fromMm: Mm | null; readonly toMm: Mm | null }
  | { readonly kind: 'looked'; readonly level: Level }
  | { readonly kind: 'weighed'; readonly massMg: number }
  | { readonly kind: 'size seen'; readonly fromMm: Mm; readonly toMm: Mm }
  | { readonly kind: 'offered'; readonly heads: number; readonly fromMm: Mm; readonly toMm: Mm }
  | { readonly kind: 'discarded'; readonly heads: number }
  | { readonly kind: 'moved in'; readonly lot: Lot }
  | { readonly kind: 'moved out'; readonly heads: number }
  | { readonly kind: 'cup looked'; readonly look: CupLook }
);

export interface Bin {
  readonly code: string;
  readonly name: string;
  readonly species: string;
  readonly role: BinRole;
  readonly room: string;
  /** Room it is moved to today; all before was spent in `room`. */
  readonly nextRoom?: string;
  /** Heads when full, for looking by eye; for colonies and cups the capacity. */
  readonly capacity: number | null;
  /** Breeding adults kept back in a colony. */
  readonly keepAdults: boolean;
  /** Left in peace until harvested: tonight's prey is not taken from it. */
  readonly reserved?: boolean;
  readonly events: readonly BinEvent[];
}

/** A delivery that was ordered and is not here yet. */
export interface ExpectedDelivery {
  readonly code: string;
  readonly species: string;
  /** Bin it will go into. */
  readonly bin: string;
  readonly lot: Lot;
  readonly day: DayNumber;
}
