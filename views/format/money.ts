/** How money is written: whole cents in the keeper's currency. */
import type { Cents } from '../../src/husbandry/orders/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';

/** '€24.50'. */
export const money = (cents: Cents, currency: string): string =>
  new Intl.NumberFormat('en-GB', { style: 'currency', currency }).format(cents / PERCENT);

const SMALL_BELOW_CENTS = 10;
const SMALL_DIGITS = 3;

/** The price of one head: a tenth of a cent where a cent says too little. */
export const moneyEach = (cents: number, currency: string): string =>
  new Intl.NumberFormat('en-GB', {
    style: 'currency',
    currency,
    ...(cents < SMALL_BELOW_CENTS ? { maximumFractionDigits: SMALL_DIGITS } : {}),
  }).format(cents / PERCENT);
