/** A bin holds prey of one species: a holding bin, a breeding colony or a fly cup. */
import type { DayNumber } from '../calendar.ts';
import type { Mm, TempC } from '../units.ts';

/** A frozen stock holds dead prey: nothing in it grows or dies. */
export type BinRole = 'holding' | 'colony' | 'cup' | 'frozen';
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

/** Where a bin stands: a room, and temperatures of its own where it has a heater, a cooler or a fridge. */
export interface Where {
  readonly room: string;
  readonly ownC: { readonly dayC: TempC; readonly nightC: TempC } | null;
}

/** How large a bin is, in what its species is crowded by: dm2, litres or grams of medium. */
export interface Space {
  readonly by: 'area' | 'volume' | 'medium';
  readonly units: number;
}

/** What was seen of or done to a bin on one civil day, in the order written. */
export type BinEvent = { readonly day: DayNumber } & (
  | { readonly kind: 'delivered'; readonly lot: Lot; readonly dead: number }
  | {
      readonly kind: 'counted';
      readonly heads: number;
      readonly fromMm: Mm | null;
      readonly toMm: Mm | null;
      /** How many of them were grown, where these were counted apart. */
      readonly grown?: number | null;
    }
  | { readonly kind: 'looked'; readonly level: Level }
  | { readonly kind: 'weighed'; readonly massMg: number; readonly sample?: Sample | null }
  | { readonly kind: 'size seen'; readonly fromMm: Mm; readonly toMm: Mm }
  | { readonly kind: 'offered'; readonly heads: number; readonly fromMm: Mm; readonly toMm: Mm }
  | { readonly kind: 'discarded'; readonly heads: number }
  /** Dead taken out, all that were found since the last look. */
  | { readonly kind: 'found dead'; readonly heads: number }
  /** Killed for want of room, frozen or fed off; of these lengths, or of all where null. */
  | { readonly kind: 'culled'; readonly heads: number; readonly fromMm: Mm | null; readonly toMm: Mm | null }
  | { readonly kind: 'moved in'; readonly lot: Lot }
  /** Taken out alive: moved, harvested, split off; of these lengths, or of all where null. */
  | {
      readonly kind: 'moved out';
      readonly heads: number;
      readonly fromMm?: Mm | null;
      readonly toMm?: Mm | null;
    }
  | { readonly kind: 'cup looked'; readonly look: CupLook }
  /** The first adults were seen. */
  | { readonly kind: 'first adults' }
  /** Adults told apart. */
  | { readonly kind: 'sexed'; readonly females: number; readonly males: number }
  /** The bin was put elsewhere, or its own temperatures were changed. */
  | { readonly kind: 'placed'; readonly before: Where; readonly after: Where }
  /** Cleaned out: this share of the eggs went with the litter; a medium was renewed. */
  | { readonly kind: 'cleaned out'; readonly eggsLost: number }
  /** A crash or die-off: so many are left alive. */
  | { readonly kind: 'died off'; readonly left: number }
);

/** A part of a bin weighed by itself. */
export interface Sample {
  readonly heads: number;
  readonly massMg: number;
  /** Spread of single weights, standard deviation over mean, where they were weighed one by one. */
  readonly cv: number | null;
}

/** Whether an event tells of a crash: of a colony or bin that died off, of a cup that crashed. */
export const isLost = (event: BinEvent): boolean =>
  event.kind === 'died off' || (event.kind === 'cup looked' && event.look === 'crashed');

export interface Bin {
  readonly code: string;
  readonly name: string;
  readonly species: string;
  readonly role: BinRole;
  /** Room it stands in. */
  readonly room: string;
  /** Its own temperatures; absent or null: those of the room. */
  readonly ownC?: Where['ownC'];
  /** How large it is; absent or null: only `capacity` is known. */
  readonly space?: Space | null;
  /** Where its stock came from, as the keeper writes it: a supplier, another bin. */
  readonly origin?: string;
  /** New stock kept apart until this day. */
  readonly quarantineUntil?: DayNumber | null;
  /** Heads when full, for looking by eye; for colonies and cups the capacity. */
  readonly capacity: number | null;
  /** Breeding adults kept back in a colony. */
  readonly keepAdults: boolean;
  /** Left alone until this day: before, it feeds only who finds nothing else; absent or null: it is not. */
  readonly restsUntil?: DayNumber | null;
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
  /** The order it is part of; absent where it is expected by itself. */
  readonly order?: string;
  /** What is known of who sends it, where it is not as the method has it. */
  readonly sender?: Sender;
}

/** How a supplier delivers. */
export interface Sender {
  readonly overCountShare: number;
  readonly lossShare: number;
  /** Chance a day that a parcel on its way is a further day late. */
  readonly lateChance: number;
}
