/** Money in words, in the keeper's currency. */
import { CENTS_PER_UNIT } from '../units.ts';
import type { Cents } from './market.ts';

/** '€12.50'; a currency without hundredths is written without them. */
export const moneyWords = (cents: Cents, currency: string): string =>
  new Intl.NumberFormat('en-GB', { style: 'currency', currency }).format(cents / CENTS_PER_UNIT);
