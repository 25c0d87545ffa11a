/** What an order comes to: goods and postage, and what is missing to the least order and to free postage. */
import type { Mg } from '../units.ts';
import type { Cents, Offer, Supplier } from './market.ts';
import { liveGrams, type Packed } from './pack-mass.ts';
import { packCents, postageCents, shortOfMinimum } from './price.ts';

export interface OrderTotal {
  readonly goodsCents: Cents;
  readonly postageCents: Cents;
  /** Goods missing to the least order; 0: it is reached. */
  readonly shortCents: Cents;
  /** Goods missing to free postage; 0: it costs nothing, or is never free. */
  readonly toFreeCents: Cents;
}

/** One line for an offer; mass of a body one millimetre long by species. */
export function orderTotal(
  supplier: Supplier,
  lines: readonly Packed<Offer>[],
  perCubicMm: (species: string) => Mg,
): OrderTotal {
  const goodsCents = lines.reduce((sum, { offer, packs }) => sum + packs * packCents(offer, packs), 0);
  const postage = postageCents(supplier.postage, { goodsCents, grams: liveGrams(lines, perCubicMm) });
  const { freeFromCents } = supplier.postage;
  return {
    goodsCents,
    postageCents: postage,
    shortCents: shortOfMinimum(supplier, goodsCents),
    toFreeCents: postage === 0 || freeFromCents === null ? 0 : freeFromCents - goodsCents,
  };
}
