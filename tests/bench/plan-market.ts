/** Who sells in the worlds, as the program is told of it. */
import type { Market, Offer, Supplier } from '../../src/husbandry/orders/index.ts';
import type { Log } from './plan-worlds/log.ts';
import { BREEDS } from './plan-worlds/prey.ts';
import * as sellers from './plan-worlds/sellers.ts';

/** The Sunday that is day 0 of every world. */
export const FIRST_DAY = 20_786;

/** Names of the worlds as the program's codes. */
export const slug = (words: string): string => words.replaceAll('/', '-').replaceAll(' ', '-');

export const marketOf = ({ arrivals }: Log): Market => ({
  suppliers: sellers.SELLERS.map(supplierOf),
  offers: sellers.OFFERS.map(offered),
  arrivals: arrivals.map(({ seller, due, came, ...counts }) => ({
    ...counts,
    supplier: (sellers.SELLERS[seller] as sellers.Seller).code,
    due: FIRST_DAY + due,
    came: FIRST_DAY + came,
  })),
  weather: [],
  purse: { currency: 'EUR', hourCents: 0, weekMostCents: null },
});

const supplierOf = (seller: sellers.Seller): Supplier => ({
  code: seller.code,
  name: seller.code,
  kind: seller.kind,
  transitDays: seller.transitDays,
  dispatchWeekdays: seller.sendsOn,
  cutOffDays: seller.cutOffDays,
  cutOffTime: null,
  holidays: [],
  postage: { flatCents: seller.postageCents, perKgCents: 0, freeFromCents: seller.freeFromCents },
  minimumCents: seller.minimumCents,
  lossShare: null,
  overCountShare: null,
  coldBelowC: null,
  heatAboveC: null,
  holdDays: null,
});

const offered = (offer: sellers.Offer): Offer => ({
  code: slug(offer.code),
  supplier: (sellers.SELLERS[offer.seller] as sellers.Seller).code,
  species: BREEDS[offer.form].species,
  size: offer.size,
  fromMm: offer.fromMm,
  toMm: offer.toMm,
  packHeads: offer.packHeads,
  prices: offer.prices.map(([fromPacks, packCents]) => ({ fromPacks, packCents })),
  mostPacks: null,
});
