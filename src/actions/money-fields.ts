/** Sums of money as the keeper writes them: '12', '12.50', '12,50', '€12.50'; read into hundredths of the keeper's currency. */
import { z } from 'zod';
import type { Cents } from '../husbandry/orders/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { said } from './said.ts';

const CENTS = 100;
const MOST = 1_000_000;

/** A sum as it was written: the mark of a currency may stand before or after it. */
export interface Sum {
  readonly typed: string;
  readonly cents: Cents;
  /** '€', 'GBP'; '' where only a number stands. */
  readonly mark: string;
}

const SUM = /^(?<before>[^\d\s.,+-]*)\s*(?<whole>\d*)(?:[.,](?<part>\d{1,2}))?\s*(?<after>[^\d\s.,+-]*)$/u;

/** A sum of money, 0 or more. */
export const money = z
  .union([z.string(), z.number()], { error: 'This is needed.' })
  .transform((given, context): Sum => {
    const typed = `${given}`.trim();
    const refuse = (sentence: string): never => {
      context.addIssue({ code: 'custom', params: { code: 'not-a-sum' }, message: sentence });
      return z.NEVER;
    };
    if (typed === '') return refuse('This is needed.');
    if (typed.startsWith('-'))
      return refuse(`"${typed}" is less than nothing; write a sum such as 12.50, or 0.`);
    const { before = '', whole = '', part = '', after = '' } = SUM.exec(typed)?.groups ?? {};
    if (whole === '' && part === '')
      return refuse(`"${typed}" is not a sum of money; write it as 12 or 12.50.`);
    const cents = Number(whole) * CENTS + Number(part.padEnd(2, '0'));
    if (cents > MOST * CENTS) return refuse(`"${typed}" is too much; write a sum up to ${MOST}.`);
    return { typed, cents, mark: before === '' ? after : before };
  });

/** The same, or null where it is left empty. */
export const moneyOrNone = z.union([z.literal('').transform(() => null), z.null(), money]);

/** What a sum is worth here, or a Problem where another currency's mark stands beside it. */
export function centsIn(currency: string, { typed, cents, mark }: Sum, field: string): Result<Cents> {
  if (mark === '' || marksOf(currency).includes(mark.toUpperCase())) return ok(cents);
  const plain = typed.replace(mark, '').trim();
  const sentence = `"${typed}" is not in your currency, the ${currencyName(currency)} (${currency}); write the sum in it, such as ${plain}, or choose another in the settings.`;
  return err(problem('other-currency', sentence, field));
}

type Sums<T> = { readonly [Name in keyof T]: Sum | null | undefined };
type Worth<T> = { [Name in keyof T]: null extends T[Name] ? Cents | null : Cents };

/** What those of several sums that were said are worth; the first that is in another currency is a Problem. */
export function allCentsIn<T extends Sums<T>>(currency: string, sums: T): Result<Partial<Worth<T>>> {
  const worth: Record<string, Cents | null> = {};
  for (const [field, sum] of Object.entries(said(sums)) as [string, Sum | null][]) {
    const cents = sum === null ? ok(null) : centsIn(currency, sum, field);
    if (!cents.ok) return cents;
    worth[field] = cents.value;
  }
  return ok(worth as Partial<Worth<T>>);
}

/** A currency's code and the signs it is written with, capitals. */
function marksOf(currency: string): readonly string[] {
  const signs = (['symbol', 'narrowSymbol'] as const).map((currencyDisplay) =>
    new Intl.NumberFormat('en-GB', { style: 'currency', currency, currencyDisplay })
      .formatToParts(0)
      .find(({ type }) => type === 'currency'),
  );
  return [currency, ...signs.map((sign) => sign?.value.toUpperCase() ?? currency)];
}

const names = new Intl.DisplayNames('en-GB', { type: 'currency' });
/** 'Euro', 'British Pound'. */
export const currencyName = (currency: string): string => names.of(currency) ?? currency;

/** The code of a currency that is known here, as ISO 4217 has it. */
export const currencyCode = z.string({ error: 'Choose a currency.' }).transform((given, context): string => {
  const code = given.trim().toUpperCase();
  if (Intl.supportedValuesOf('currency').includes(code)) return code;
  const message = `"${given}" is not the code of a currency; write it as EUR, GBP or USD.`;
  context.addIssue({ code: 'custom', params: { code: 'unknown-currency' }, message });
  return z.NEVER;
});
