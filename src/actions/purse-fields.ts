/** What the keeper says of money, as it is entered, and what is kept of it. */
import { z } from 'zod';
import type { Purse } from '../husbandry/orders/index.ts';
import { ok, type Result } from '../husbandry/result.ts';
import { allCentsIn, currencyCode, money, moneyOrNone } from './money-fields.ts';

export const purseFields = z.strictObject({
  currency: currencyCode,
  /** What an hour is worth. */
  hour: money,
  /** Most spent in seven days; empty: no bound. */
  weekMost: moneyOrNone.default(null),
});

/** Sums are in the currency said beside them. */
export function purseOf({ currency, ...sums }: z.output<typeof purseFields>): Result<Purse> {
  const worth = allCentsIn(currency, sums);
  if (!worth.ok) return worth;
  const { hour = 0, weekMost = null } = worth.value;
  return ok({ currency, hourCents: hour, weekMostCents: weekMost });
}
