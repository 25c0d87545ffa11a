/** Who sells prey, what they offer, and what is known of how they deliver: plain data of one revision. */
import type { DayNumber, DayRange } from '../calendar.ts';
import type { Mm, TempC } from '../units.ts';

/** Money in hundredths of the keeper's currency, whole. */
export type Cents = number;

/** What a parcel costs beside the goods: a flat sum and so much a kilogram of live prey; nothing from a goods value on. */
export interface Postage {
  readonly flatCents: Cents;
  readonly perKgCents: Cents;
  readonly freeFromCents: Cents | null;
}

export interface Supplier {
  readonly code: string;
  readonly name: string;
  /** A parcel comes by post or carrier; a shop is gone to, on the same day. */
  readonly kind: 'parcel' | 'shop';
  /** Days from dispatch to the door; 0 for a shop. */
  readonly transitDays: number;
  /** Weekdays, Monday first, on which parcels are sent, or the shop is open. */
  readonly dispatchWeekdays: readonly boolean[];
  /** Days before dispatch by which an order must be in; 0: on the day itself, before `cutOffTime`. */
  readonly cutOffDays: number;
  /** 'HH:MM' on the last day of ordering; null: any time of it. */
  readonly cutOffTime: string | null;
  /** A day on which that time has passed already, so that it is too late to order on it; absent: none. */
  readonly tooLateOn?: DayNumber;
  /** No parcel is sent on these days. */
  readonly holidays: readonly DayRange[];
  readonly postage: Postage;
  /** Least goods value of one order. */
  readonly minimumCents: Cents;
  /** The keeper's own word for share lost and share sent over; null: as the method has it, or learned. */
  readonly lossShare: number | null;
  readonly overCountShare: number | null;
  /** Parcels are held back when it is colder or hotter outside than this; null: never. */
  readonly coldBelowC: TempC | null;
  readonly heatAboveC: TempC | null;
  /** Most days a parcel is held before the order is sent back; null: until the weather lets it go. */
  readonly holdDays: number | null;
}

/** From this many packs on, every pack costs this. */
export interface PriceBreak {
  readonly fromPacks: number;
  readonly packCents: Cents;
}

export interface Offer {
  readonly code: string;
  readonly supplier: string;
  readonly species: string;
  /** Trade name of the size, as the supplier says it. */
  readonly size: string;
  /** Body lengths in a pack, least and most. */
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly packHeads: number;
  /** The first from 1 pack, fromPacks rising. */
  readonly prices: readonly PriceBreak[];
  /** Packs there are to be had at once; null: any number. */
  readonly mostPacks: number | null;
}

/** Days on which it is as cold or as hot as this outside, as the keeper expects it. */
export interface WeatherSpell {
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly tempC: TempC;
}

/** One box as it came, with all its lines, for what a supplier's record teaches. */
export interface Arrival {
  readonly supplier: string;
  readonly ordered: number;
  readonly alive: number;
  readonly dead: number;
  /** Day it was due, and day it came. */
  readonly due: DayNumber;
  readonly came: DayNumber;
  /** Its heads were counted or weighed; else alive is what the label said, and tells nothing of the count. */
  readonly counted?: boolean;
}

/** What the keeper says of money and time, for the plan. */
export interface Purse {
  /** ISO 4217 code, such as EUR. */
  readonly currency: string;
  /** What an hour of the keeper's is worth, 0 where it is not counted. */
  readonly hourCents: Cents;
  /** Most spent in a week, Sunday to Saturday; null: no bound. */
  readonly weekMostCents: Cents | null;
}

/** An order by the day it was placed: goods and postage. */
export interface Spent {
  readonly day: DayNumber;
  readonly cents: Cents;
}

export interface Market {
  readonly suppliers: readonly Supplier[];
  readonly offers: readonly Offer[];
  readonly arrivals: readonly Arrival[];
  readonly weather: readonly WeatherSpell[];
  readonly purse: Purse;
  /** Orders of the last seven days; absent: none. */
  readonly spent?: readonly Spent[];
}

/** Nobody sells anything yet. */
export const noMarket: Market = {
  suppliers: [],
  offers: [],
  arrivals: [],
  weather: [],
  purse: { currency: 'EUR', hourCents: 0, weekMostCents: null },
};
