/** Front door: suppliers, their offers, what parcels cost and when they come. */
export { type Dispatch, dispatchesOf, heldUntil, isHeldOn, isSentOn } from './dispatch.ts';
export {
  type Arrival,
  type Cents,
  type Market,
  noMarket,
  type Offer,
  type Postage,
  type PriceBreak,
  type Purse,
  type Supplier,
  type WeatherSpell,
} from './market.ts';
export { offerTrouble } from './offer-trouble.ts';
export { headCents, packCents, postageCents, shortOfMinimum } from './price.ts';
export { supplierTrouble } from './supplier-trouble.ts';
