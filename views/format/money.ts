/** How money is written: hundredths of the keeper's currency, and the price of one head in more figures where it is small. */
import type { Cents } from '../../src/husbandry/orders/index.ts';

const PER_UNIT = 100;
const DIGITS = 2;

/** '€12.50'. */
export const money = (cents: Cents, currency: string): string =>
  new Intl.NumberFormat('en-GB', { style: 'currency', currency }).format(cents / PER_UNIT);

/** '€0.024' or '€0.20': two figures that say something; '€1.20' from a whole unit on. */
export function headPrice(cents: number, currency: string): string {
  if (cents <= 0 || cents >= PER_UNIT) return money(cents, currency);
  const figures = Math.max(DIGITS, DIGITS - 1 - Math.floor(Math.log10(cents / PER_UNIT)));
  const digits = { minimumFractionDigits: figures, maximumFractionDigits: figures };
  return new Intl.NumberFormat('en-GB', { style: 'currency', currency, ...digits }).format(cents / PER_UNIT);
}

/** '12.50', as it is typed. */
export const moneyTyped = (cents: Cents): string => (cents / PER_UNIT).toFixed(DIGITS);
