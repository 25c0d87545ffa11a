/** The keeper's own numbers of a prey species or of the method as they would stand with some figures typed anew. */
import { z } from 'zod';
import type { BookNumber } from '../facts/own/book-number.ts';
import type { Own } from '../husbandry/animals/index.ts';
import type { DayNumber } from '../husbandry/calendar.ts';
import type { ChangedNumbers, OwnNumbers } from '../husbandry/own-numbers.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { rowNamed, type Tx } from '../store/index.ts';
import { asOf, formId, someText, text } from './fields.ts';
import { figureField, figureKept } from './measure-bounds.ts';
import type { Numbered } from './numbered.ts';

export const numbersEdit = z.strictObject({
  /** Code of a prey species, or 'method'. */
  of: someText,
  /** By key, as typed: shares in percent. */
  figures: z.record(z.string(), z.union([z.string(), z.number()])),
  /** Why, in the keeper's words; kept with every figure this changes. */
  why: text.default(''),
  asOf,
  formId,
});

/** What the keeper changed so far. */
export const ownNumbersOf = async (tx: Tx, code: string): Promise<OwnNumbers> =>
  (await tx.ask(rowNamed('numbers', code)))?.changes ?? {};

interface Typed {
  readonly figures: Readonly<Record<string, string | number>>;
  readonly day: DayNumber;
  readonly why: string;
}

/** What differs from the Book then; a Problem names the figure that cannot be. */
export function numbersEdited(
  { numbers, called, whyNot }: Numbered,
  own: OwnNumbers,
  { figures, day, why }: Typed,
): Result<OwnNumbers> {
  const after: Record<string, Own<number>> = { ...own };
  for (const [key, typed] of Object.entries(figures)) {
    const number = numbers.find((each) => each.figures.some((figure) => figure.key === key));
    if (number === undefined)
      return err(problem('unknown-number', `"${key}" is not a number of ${called}.`, key));
    const read = figureField(number).safeParse(typed);
    if (!read.success) return err(problem('number-out-of-range', read.error.issues[0]?.message ?? '', key));
    const value = figureKept(number.measure, read.data);
    if (value === bookValue(number, key)) delete after[key];
    else if (after[key]?.value !== value) after[key] = { value, day, ...(why === '' ? {} : { why }) };
  }
  const wrong = whyNot(after);
  return wrong === null ? ok(after) : err(wrong);
}

const bookValue = ({ figures }: BookNumber, key: string): number | undefined =>
  figures.find((figure) => figure.key === key)?.value;

/** What an act writes: the row, or nothing more of what is as the Book has it. */
export const numbersWritten = (
  row: ChangedNumbers,
): { puts: { numbers: ChangedNumbers[] } } | { drops: { numbers: string[] } } =>
  Object.keys(row.changes).length === 0 ? { drops: { numbers: [row.code] } } : { puts: { numbers: [row] } };
