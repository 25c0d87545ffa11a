/** Money as the keeper writes it. */
import type { Cents } from '../husbandry/orders/index.ts';

const CENTS_PER_UNIT = 100;

export const moneyWords = (cents: Cents, currency: string): string =>
  new Intl.NumberFormat('en-GB', { style: 'currency', currency }).format(cents / CENTS_PER_UNIT);
