/** Who sells prey in the worlds: two that send parcels and a dear shop that opens twice a week; what they ask. Money in hundredths. */
import type { Form } from './kinds.ts';

export interface Seller {
  readonly code: string;
  readonly kind: 'parcel' | 'shop';
  /** Days on the way. */
  readonly transitDays: number;
  /** Monday first. */
  readonly sendsOn: readonly boolean[];
  /** Days before sending by which an order is in. */
  readonly cutOffDays: number;
  readonly postageCents: number;
  readonly freeFromCents: number | null;
  readonly minimumCents: number;
  /** What is truly lost and sent over, and the chance a day that a parcel is a day late. */
  readonly lossShare: number;
  readonly overShare: number;
  readonly lateChance: number;
}

export interface Offer {
  readonly code: string;
  /** Index into the sellers. */
  readonly seller: number;
  readonly form: Form;
  readonly size: string;
  readonly fromMm: number;
  readonly toMm: number;
  readonly packHeads: number;
  /** From so many packs on, each costs this; the first from 1. */
  readonly prices: readonly (readonly [fromPacks: number, packCents: number])[];
}

const days = (...open: number[]): readonly boolean[] => Array.from({ length: 7 }, (_, d) => open.includes(d));

export const SELLERS: readonly Seller[] = [
  {
    code: 'barn',
    kind: 'parcel',
    transitDays: 2,
    sendsOn: days(0, 1, 2),
    cutOffDays: 1,
    postageCents: 650,
    freeFromCents: 6000,
    minimumCents: 1000,
    lossShare: 0.02,
    overShare: 0.08,
    lateChance: 0.1,
  },
  {
    code: 'mill',
    kind: 'parcel',
    transitDays: 3,
    sendsOn: days(1),
    cutOffDays: 1,
    postageCents: 490,
    freeFromCents: 9000,
    minimumCents: 1500,
    lossShare: 0.04,
    overShare: 0.04,
    lateChance: 0.15,
  },
  {
    code: 'shop',
    kind: 'shop',
    transitDays: 0,
    sendsOn: days(1, 5),
    cutOffDays: 0,
    postageCents: 0,
    freeFromCents: null,
    minimumCents: 0,
    lossShare: 0.01,
    overShare: 0,
    lateChance: 0,
  },
];

const [BARN, MILL, SHOP] = [0, 1, 2];

/** Cheaper by the five and by the twenty. */
const breaks = (cents: number) =>
  [
    [1, cents],
    [5, Math.round(cents * 0.9)],
    [20, Math.round(cents * 0.78)],
  ] as const;

type Row = readonly [
  seller: number,
  form: Form,
  size: string,
  from: number,
  to: number,
  heads: number,
  cents: number,
];

const ROWS: readonly Row[] = [
  [BARN, 'cricket', 'pinhead', 2, 3, 150, 380],
  [BARN, 'cricket', '1/4 in', 4.5, 7.5, 100, 380],
  [BARN, 'cricket', '1/2 in', 10.5, 15, 70, 400],
  [BARN, 'roach', 'medium', 12, 19, 40, 480],
  [BARN, 'mealworm', 'medium', 17, 22, 50, 450],
  [MILL, 'cricket', '1/8 in', 3, 4.5, 300, 620],
  [MILL, 'cricket', '3/4 in', 15, 20, 120, 880],
  [MILL, 'roach', 'large', 19, 34, 50, 1100],
  [SHOP, 'cricket', '1/8 in', 2.5, 4.5, 40, 350],
  [SHOP, 'cricket', '1/2 in', 10.5, 15, 25, 350],
];

export const OFFERS: readonly Offer[] = ROWS.map(([seller, form, size, fromMm, toMm, packHeads, cents]) => ({
  code: `${(SELLERS[seller] as Seller).code} ${form} ${size}`,
  seller,
  form,
  size,
  fromMm,
  toMm,
  packHeads,
  prices: seller === SHOP ? [[1, cents]] : breaks(cents),
}));

/** Price of one pack when so many are bought. */
export function packCents({ prices }: Offer, packs: number): number {
  let cents = (prices[0] as readonly [number, number])[1];
  for (const [from, each] of prices) if (packs >= from) cents = each;
  return cents;
}

/** Days counted so that day 0 is a Sunday; Monday is 0. */
const weekdayOf = (day: number): number => (((day + 6) % 7) + 7) % 7;

/** Day on which what is ordered on a day is sent. */
export function sentOn({ sendsOn, cutOffDays }: Seller, ordered: number): number {
  let day = ordered + cutOffDays;
  while (!sendsOn[weekdayOf(day)]) day += 1;
  return day;
}
