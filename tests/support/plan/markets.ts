/** Invented suppliers and their offers, for rooms that buy. */
import type { Market, Offer, PriceBreak, Supplier } from '../../../src/husbandry/orders/index.ts';

const WEEKDAYS = (text: string): boolean[] => [...text].map((day) => day !== '-');

export const supplierWith = (over: Partial<Supplier> & Pick<Supplier, 'code'>): Supplier => ({
  name: over.code,
  kind: 'parcel',
  transitDays: 2,
  dispatchWeekdays: WEEKDAYS('MT-----'),
  cutOffDays: 1,
  cutOffTime: null,
  holidays: [],
  postage: { flatCents: 590, perKgCents: 0, freeFromCents: null },
  minimumCents: 0,
  lossShare: null,
  overCountShare: null,
  coldBelowC: null,
  heatAboveC: null,
  holdDays: null,
  ...over,
});

export const offerWith = (
  over: Partial<Offer> & Pick<Offer, 'code' | 'supplier' | 'species' | 'fromMm' | 'toMm'>,
): Offer => ({
  size: `${over.fromMm}-${over.toMm} mm`,
  packHeads: 100,
  prices: [{ fromPacks: 1, packCents: 500 }],
  mostPacks: null,
  ...over,
});

const breaks = (...pairs: readonly (readonly [number, number])[]): PriceBreak[] =>
  pairs.map(([fromPacks, packCents]) => ({ fromPacks, packCents }));

export const marketWith = (over: Partial<Market>): Market => ({
  suppliers: [],
  offers: [],
  arrivals: [],
  weather: [],
  purse: { currency: 'EUR', hourCents: 0, weekMostCents: null },
  ...over,
});

/** Two that send parcels and a shop, eight offers of six species. */
export const mixedMarket: Market = marketWith({
  suppliers: [
    supplierWith({
      code: 'S1',
      dispatchWeekdays: WEEKDAYS('M------'),
      postage: { flatCents: 690, perKgCents: 0, freeFromCents: 6000 },
    }),
    supplierWith({ code: 'S2', dispatchWeekdays: WEEKDAYS('-T-----'), minimumCents: 1500, transitDays: 1 }),
    supplierWith({
      code: 'S3',
      kind: 'shop',
      transitDays: 0,
      cutOffDays: 0,
      dispatchWeekdays: WEEKDAYS('MTWTFS-'),
      postage: { flatCents: 0, perKgCents: 0, freeFromCents: null },
    }),
  ],
  offers: [
    offerWith({
      code: 'O1',
      supplier: 'S1',
      species: 'acheta-domesticus',
      fromMm: 2,
      toMm: 4,
      packHeads: 500,
      prices: breaks([1, 900], [3, 800]),
    }),
    offerWith({
      code: 'O2',
      supplier: 'S1',
      species: 'acheta-domesticus',
      fromMm: 5,
      toMm: 9,
      packHeads: 250,
      prices: breaks([1, 850], [4, 750]),
    }),
    offerWith({
      code: 'O3',
      supplier: 'S1',
      species: 'gryllodes-sigillatus',
      fromMm: 10,
      toMm: 14,
      packHeads: 100,
      prices: breaks([1, 700]),
    }),
    offerWith({
      code: 'O4',
      supplier: 'S2',
      species: 'blaptica-dubia',
      fromMm: 8,
      toMm: 15,
      packHeads: 50,
      prices: breaks([1, 900], [2, 820]),
    }),
    offerWith({
      code: 'O5',
      supplier: 'S2',
      species: 'tenebrio-molitor',
      fromMm: 15,
      toMm: 25,
      packHeads: 200,
      prices: breaks([1, 500]),
    }),
    offerWith({
      code: 'O6',
      supplier: 'S2',
      species: 'gryllus-bimaculatus',
      fromMm: 18,
      toMm: 26,
      packHeads: 60,
      prices: breaks([1, 950]),
    }),
    offerWith({
      code: 'O7',
      supplier: 'S3',
      species: 'acheta-domesticus',
      fromMm: 6,
      toMm: 10,
      packHeads: 40,
      prices: breaks([1, 350]),
    }),
    offerWith({
      code: 'O8',
      supplier: 'S3',
      species: 'drosophila-hydei',
      fromMm: 3,
      toMm: 3,
      packHeads: 150,
      prices: breaks([1, 600]),
    }),
  ],
});
