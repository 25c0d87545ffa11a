/** A number of the keeper's in place of the Book's. */
import type { Own } from '../../husbandry/animals/index.ts';
import { civilDate } from '../../husbandry/calendar.ts';
import type { Sourced } from '../../husbandry/sourced.ts';

/** With the unit of the one it replaces, since when and why; `beside` says what of it is not the keeper's. */
export const yours = <T>(
  { unit }: Sourced<unknown>,
  { value, day, why }: Own<T>,
  beside = '',
): Sourced<T> => ({
  value,
  unit,
  source: 'keeper',
  status: 'yours',
  note: `since ${civilDate(day)}${why === undefined ? '' : `: ${why}`}${beside}`,
});
