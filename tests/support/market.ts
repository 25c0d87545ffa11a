/** Suppliers and offers for tests: an invented sender of parcels, and what is said otherwise. */
import type { Offer, Supplier } from '../../src/husbandry/orders/index.ts';

/** Sends every day, for nothing, and is there at once. */
export const supplierWith = (over: Partial<Supplier> = {}): Supplier => ({
  code: 'S1',
  name: 'Grille & Co',
  kind: 'parcel',
  transitDays: 0,
  dispatchWeekdays: Array<boolean>(7).fill(true),
  cutOffDays: 0,
  cutOffTime: null,
  holidays: [],
  postage: { flatCents: 0, perKgCents: 0, freeFromCents: null },
  minimumCents: 0,
  lossShare: null,
  overCountShare: null,
  coldBelowC: null,
  heatAboveC: null,
  holdDays: null,
  ...over,
});

/** 100 medium crickets at 5.00. */
export const offerWith = (over: Partial<Offer> = {}): Offer => ({
  code: 'F1',
  supplier: 'S1',
  species: 'acheta-domesticus',
  size: 'medium',
  fromMm: 9,
  toMm: 12,
  packHeads: 100,
  prices: [{ fromPacks: 1, packCents: 500 }],
  mostPacks: null,
  ...over,
});
