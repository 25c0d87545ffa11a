/** What a keeper writes down, and what a keeper does about it: all that anybody who buys may know, and all they may do. */
import type { Form } from './kinds.ts';

export interface AnimalNote {
  readonly code: string;
  readonly kind: string;
  /** As measured at the last moult. */
  readonly gaugeMm: number;
  readonly lastOffered: number | null;
  readonly lastOutcome: 'taken' | 'refused' | null;
  readonly lastTaken: number | null;
  /** The last moult lies between these days. */
  readonly moulted: { readonly earliest: number; readonly found: number } | null;
  /** Days between meals taken with no refusal and no moult between, oldest first. */
  readonly intervals: readonly number[];
  readonly offers: number;
  readonly taken: number;
  readonly refusalsInRow: number;
  /** Helpings given since the last moult was found, the last few. */
  readonly given: readonly Helping[];
}

/** Prey of one species given at one meal, with its least and greatest length. */
export interface Helping {
  readonly day: number;
  readonly species: string;
  readonly heads: number;
  readonly fromMm: number;
  readonly toMm: number;
}

export type TubEvent = { readonly day: number } & (
  | {
      readonly what: 'came';
      readonly heads: number;
      readonly dead: number;
      readonly fromMm: number;
      readonly toMm: number;
    }
  | { readonly what: 'moved in'; readonly heads: number; readonly fromMm: number; readonly toMm: number }
  /** Of a colony its grown are counted apart. */
  | { readonly what: 'counted'; readonly heads: number; readonly grown: number | null }
  | { readonly what: 'looks'; readonly fromMm: number; readonly toMm: number }
  | { readonly what: 'fed'; readonly heads: number; readonly fromMm: number; readonly toMm: number }
  | { readonly what: 'harvested'; readonly heads: number; readonly fromMm: number; readonly toMm: number }
  | { readonly what: 'died off'; readonly left: number }
);

export interface TubNote {
  readonly code: string;
  readonly form: Form;
  readonly species: string;
  /** Heads a colony has room for; null: prey that only waits to be fed. */
  readonly colonyRoom: number | null;
  readonly events: readonly TubEvent[];
  /** Heads by the notes: the last count, or what came, less what was taken since. */
  readonly book: number;
  /** Length it looked to have at the last look. */
  readonly looksMm: number;
}

export interface ParcelNote {
  readonly code: string;
  /** Index into the offers. */
  readonly offer: number;
  readonly heads: number;
  readonly due: number;
}

export interface ArrivalNote {
  /** Index into the sellers. */
  readonly seller: number;
  readonly ordered: number;
  readonly alive: number;
  readonly dead: number;
  readonly due: number;
  readonly came: number;
}

export interface Log {
  /** A Sunday, before its evening. */
  readonly day: number;
  readonly animals: readonly AnimalNote[];
  readonly tubs: readonly TubNote[];
  readonly parcels: readonly ParcelNote[];
  readonly arrivals: readonly ArrivalNote[];
}

export interface Order {
  readonly day: number;
  readonly offer: number;
  readonly packs: number;
}

/** Taken out of a colony into a tub of its own. */
export interface Harvest {
  readonly day: number;
  readonly tub: string;
  readonly heads: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/** A tub that before this day feeds only who finds nothing else. */
export interface Rest {
  readonly tub: string;
  readonly until: number;
}

/** What is done in the week to come. */
export interface Steps {
  readonly orders: readonly Order[];
  readonly harvests: readonly Harvest[];
  readonly rests: readonly Rest[];
}

/** Somebody who buys, asked every Sunday. */
export type Buyer = (log: Log) => Steps | Promise<Steps>;
