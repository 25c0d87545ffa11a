/** What packs and parcels cost. */
import { GRAMS_PER_KG } from '../units.ts';
import type { Cents, Offer, Postage, PriceBreak, Supplier } from './market.ts';

/** Price of one pack when so many are bought: the last break reached holds for all of them. */
export function packCents({ prices }: Pick<Offer, 'prices'>, packs: number): Cents {
  const reached = prices.filter(({ fromPacks }) => fromPacks <= packs);
  return (reached[reached.length - 1] ?? (prices[0] as PriceBreak)).packCents;
}

/** Price of one head when so many packs are bought, hundredths and parts of them. */
export const headCents = (offer: Pick<Offer, 'prices' | 'packHeads'>, packs: number): number =>
  packCents(offer, packs) / offer.packHeads;

/** Postage of a parcel with goods of this value and live mass. */
export function postageCents(
  { flatCents, perKgCents, freeFromCents }: Postage,
  { goodsCents, grams }: { goodsCents: Cents; grams: number },
): Cents {
  if (freeFromCents !== null && goodsCents >= freeFromCents) return 0;
  return flatCents + Math.round((perKgCents * grams) / GRAMS_PER_KG);
}

/** How much goods value is still missing to the supplier's least order; 0 when it is reached. */
export const shortOfMinimum = ({ minimumCents }: Supplier, goodsCents: Cents): Cents =>
  Math.max(0, minimumCents - goodsCents);
