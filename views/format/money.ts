/** How money is written: hundredths of the keeper's currency, and the price of one head in more figures where it is small. */
import type { Cents } from '../../src/husbandry/orders/index.ts';

const PER_UNIT = 100;
const DIGITS = 2;

/** '€12.50'. */
export const money = (cents: Cents, currency: string): string =>
  new Intl.NumberFormat('en-GB', { style: 'currency', currency }).format(cents / PER_UNIT);

/** '€0.024', with two figures at least that say something; '€1.20' where that is enough. */
export function headPrice(cents: number, currency: string): string {
  const small = cents > 0 && cents < PER_UNIT;
  const figures = small ? Math.max(DIGITS, DIGITS - 1 - Math.floor(Math.log10(cents / PER_UNIT))) : undefined;
  return new Intl.NumberFormat('en-GB', {
    style: 'currency',
    currency,
    ...(figures === undefined ? {} : { minimumFractionDigits: DIGITS, maximumFractionDigits: figures }),
  }).format(cents / PER_UNIT);
}

/** '12.50', as it is typed. */
export const moneyTyped = (cents: Cents): string => (cents / PER_UNIT).toFixed(DIGITS);
