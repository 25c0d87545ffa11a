/** What is told of a bulk order: a price a head eaten by packs ordered, as the bins stand and otherwise warm. */
import type { DayNumber } from '../calendar.ts';
import type { Cents } from '../orders/index.ts';
import type { Mm, TempC } from '../units.ts';

export interface BulkQuestion {
  /** Code of the offer. */
  readonly offer: string;
  readonly weeks: number;
}

/** One count of packs; heads are means over the weeks looked ahead. */
export interface BulkPoint {
  readonly packs: number;
  readonly heads: number;
  /** Goods and postage. */
  readonly cents: Cents;
  readonly eaten: number;
  /** Uneaten; also of age, and for want of room. */
  readonly died: number;
  /** Grown too large for everybody here. */
  readonly outgrown: number;
  /** Alive at the end, and some day to be eaten. */
  readonly left: number;
  /** Price of a head that is eaten; null where none is. */
  readonly centsPerEaten: number | null;
  /** Price of each head more that is eaten thanks to the last pack; null where it feeds nobody; below 0 where it spares the postage. */
  readonly centsPerMoreEaten: number | null;
}

/** Why a curve ends: more would be dear, of no use to anybody, more than there is, or more than was worked out. */
export type BulkEnd = 'dear' | 'no use' | 'no more' | 'not worked out';

export interface BulkCurve {
  /** Warmer than the bins stand now by this. */
  readonly warmerC: TempC;
  /** Day and night in the bin. */
  readonly tempC: { readonly minC: TempC; readonly maxC: TempC };
  /** From the fewest packs the supplier sends alone. */
  readonly points: readonly BulkPoint[];
  /** Packs at which a head that is eaten costs least: beyond, the next order feeds them cheaper. */
  readonly best: number;
  readonly end: BulkEnd;
}

/** The box in one week after its meals, by length. */
export interface BulkWeek {
  readonly day: DayNumber;
  readonly bands: readonly { readonly fromMm: Mm; readonly toMm: Mm; readonly heads: number }[];
}

/** Why no count can be named: no such offer, nothing comes within the weeks, nobody eats of it, or too few for an order. */
export type BulkNone = 'unknown' | 'cannot come' | 'nobody eats' | 'under minimum';

export interface BulkAnswer {
  readonly revision: number;
  readonly day: DayNumber;
  readonly offer: string;
  readonly orderBy: DayNumber;
  readonly sent: DayNumber;
  readonly comes: DayNumber;
  readonly packHeads: number;
  /** As the bins stand now first, then cooler, then warmer. */
  readonly curves: readonly BulkCurve[];
  /** The cheapest per head eaten among the counts at each price. */
  readonly breaks: readonly {
    readonly fromPacks: number;
    readonly packCents: Cents;
    readonly best: BulkPoint | null;
  }[];
  /** The best count from the week it comes, as the bins stand. */
  readonly weeks: readonly BulkWeek[];
}
