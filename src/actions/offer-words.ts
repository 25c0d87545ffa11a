/** An offer in a few words of the journal. */
import type { OfferRow } from '../store/index.ts';

/** '100 acheta-domesticus, medium'. */
export const offerWords = ({ packHeads, species, size }: OfferRow): string =>
  `${packHeads} ${species}${size === '' ? '' : `, ${size}`}`;
