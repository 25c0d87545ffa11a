/** Why a supplier cannot be as it is said; the first thing wrong is a Problem that says what would be right. */
import { civilDate } from '../calendar.ts';
import { type Problem, problem } from '../problems.ts';
import type { Supplier } from './market.ts';

/** What is wrong with what is said of a supplier, or null. */
export const supplierTrouble = (supplier: Supplier): Problem | null =>
  neverSends(supplier) ?? postedByShop(supplier) ?? limitsCrossed(supplier) ?? backwards(supplier);

const neverSends = ({ kind, dispatchWeekdays }: Supplier): Problem | null =>
  dispatchWeekdays.some(Boolean)
    ? null
    : problem(
        'no-weekday',
        kind === 'shop'
          ? 'Choose a day at least on which the shop is open.'
          : 'Choose a day at least on which parcels are sent.',
        'dispatchWeekdays',
      );

/** A shop is gone to: nothing is on its way, nothing is paid for bringing it. */
function postedByShop({ kind, transitDays, postage }: Supplier): Problem | null {
  if (kind !== 'shop') return null;
  if (transitDays > 0)
    return problem(
      'shop-sends',
      `"${transitDays}" does not fit: a shop is gone to, so write 0, or say that it sends parcels.`,
      'transitDays',
    );
  const paid = postage.flatCents > 0 ? 'postageFlat' : postage.perKgCents > 0 ? 'postagePerKg' : null;
  return paid === null
    ? null
    : problem('shop-sends', 'A shop asks no postage: write 0, or say that it sends parcels.', paid);
}

const limitsCrossed = ({ coldBelowC, heatAboveC }: Supplier): Problem | null =>
  coldBelowC === null || heatAboveC === null || coldBelowC < heatAboveC
    ? null
    : problem(
        'ends-swapped',
        `"${coldBelowC}" °C is not below ${heatAboveC} °C, where it gets too hot: no parcel would ever go.`,
        'coldBelowC',
      );

function backwards({ holidays }: Supplier): Problem | null {
  const wrong = holidays.find(({ from, to }) => from > to);
  return wrong === undefined
    ? null
    : problem(
        'ends-swapped',
        `"${civilDate(wrong.from)} to ${civilDate(wrong.to)}" runs backwards; the earlier day comes first.`,
        'holidays',
      );
}
