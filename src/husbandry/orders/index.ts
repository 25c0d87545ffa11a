/** Front door: suppliers, their offers, what parcels cost and when they come. */
export {
  type HeadsEstimate,
  headsByMass,
  headsByPart,
  headsBySample,
  type WeighedSample,
} from './arrival-estimate.ts';
export { type ClaimBy, claimBy } from './claim.ts';
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
  type Spent,
  type Supplier,
  type WeatherSpell,
} from './market.ts';
export { moneyWords } from './money-words.ts';
export { offerTrouble } from './offer-trouble.ts';
export { type Again, orderAgain } from './order-again.ts';
export { type OrderTotal, orderTotal } from './order-total.ts';
export { headMassBetween, liveGrams } from './pack-mass.ts';
export { headCents, packCents, postageCents, shortOfMinimum } from './price.ts';
export { asSender, type LearnedShare, recordOf, type SenderRecord, senderOf } from './sender.ts';
export { supplierTrouble } from './supplier-trouble.ts';
export { atTime, type TimeOfDay, tooLateToday } from './too-late.ts';
