/** How money is written: hundredths of the keeper's currency, and the price of one head in more figures where it is small. */
import type { Cents } from '../../src/husbandry/orders/index.ts';

const PER_UNIT = 100;
const DIGITS = 2;

const writers = new Map<string, Intl.NumberFormat>();

/** With so many digits behind the point, or as many as the currency has; made once, which takes longer than to write. */
function writerOf(currency: string, digits?: number): Intl.NumberFormat {
  const key = `${currency} ${digits}`;
  const known = writers.get(key);
  if (known !== undefined) return known;
  const figures =
    digits === undefined ? {} : { minimumFractionDigits: digits, maximumFractionDigits: digits };
  const writer = new Intl.NumberFormat('en-GB', { style: 'currency', currency, ...figures });
  writers.set(key, writer);
  return writer;
}

/** '€12.50'. */
export const money = (cents: Cents, currency: string): string => writerOf(currency).format(cents / PER_UNIT);

/** '€0.024' or '€0.20': two figures that say something; '€1.20' from a whole unit on. */
export function headPrice(cents: number, currency: string): string {
  if (cents <= 0 || cents >= PER_UNIT) return money(cents, currency);
  const figures = Math.max(DIGITS, DIGITS - 1 - Math.floor(Math.log10(cents / PER_UNIT)));
  return writerOf(currency, figures).format(cents / PER_UNIT);
}

/** '12.50', as it is typed. */
export const moneyTyped = (cents: Cents): string => (cents / PER_UNIT).toFixed(DIGITS);
