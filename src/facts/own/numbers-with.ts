/** Plain data with the keeper's own numbers in place of the Book's; what is not changed keeps its source. */
import type { Own } from '../../husbandry/animals/index.ts';
import type { OwnNumbers } from '../../husbandry/own-numbers.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import type { BookNumber, Path } from './book-number.ts';
import { yours } from './yours.ts';

/** The same object where nothing is changed; a change of what the Book no longer has is left aside. */
export const withNumbers = <T extends object>(
  book: T,
  numbers: readonly BookNumber[],
  changes: OwnNumbers,
): T => numbers.reduce((data, number) => withNumber(data, number, changes), book);

function withNumber<T>(book: T, { figures, path, sourced }: BookNumber, changes: OwnNumbers): T {
  const own = figures.flatMap((figure) => {
    const change = changes[figure.key];
    return change === undefined ? [] : [{ ...figure, change }];
  });
  const latest = own.reduce<Own<number> | null>(
    (found, { change }) => (found === null || change.day > found.day ? change : found),
    null,
  );
  if (latest === null) return book;
  const data = own.reduce((whole, figure) => replaced(whole, figure.path, () => figure.change.value), book);
  if (sourced === null) return data;
  const beside = own.length === figures.length ? '' : '; the others as the Book has them';
  return replaced(data, path, (number) => {
    const { value } = number as Sourced<unknown>;
    return yours(sourced, { ...latest, value }, beside);
  });
}

/** Plain data with what stands at a place made anew; all beside the way there is shared with the old. */
function replaced<T>(data: T, [step, ...rest]: Path, make: (old: unknown) => unknown): T {
  if (step === undefined) return make(data) as T;
  const inner = replaced((data as Record<string | number, unknown>)[step], rest, make);
  return (Array.isArray(data) ? data.with(Number(step), inner) : { ...data, [step]: inner }) as T;
}
