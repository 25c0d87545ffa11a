/** Why a row stands still: what it waits for, or why it is left out. */
import { plainWords } from './names/plain.ts';
import { said } from './reading.ts';

export const LEFT_OUT = said('left-out', 'Left out, as you answered.');
export const NONE_HERE = said(
  'none-here',
  'The row says that there are none; nothing is brought in and nothing removed.',
);
export const WAITS_FOR_KIND = said('waits-for-kind', 'Waits until you say which kind this is.');
export const WAITS_FOR_PREY = said('waits-for-prey', 'Waits until you say which prey this is.');
export const WAITS_FOR_DATES = said('waits-for-dates', 'Waits until the order of its dates is chosen.');
export const WAITS_FOR_UNIT = said('waits-for-unit', 'Waits until you say the unit of its size.');
export const NO_LONGER_KEPT = said(
  'no-longer-kept',
  'This is no longer kept; the row does not bring it back.',
);

export const SUM_ROW = said('sum-row', 'The row looks like the sum below a list; it is left out.');

const SUMS = new Set([
  'total',
  'totals',
  'subtotal',
  'grand total',
  'sum',
  'summe',
  'gesamt',
  'somme',
  'suma',
]);

/** Whether the words of a row are those of a sum below a list. */
export const isSum = (written: string): boolean => SUMS.has(plainWords(written));

/** The row names nothing by which it could be known. */
export const nothingTold = (what: string) =>
  said('nothing-told', `The row names neither ${what}, so nothing can be told from it.`);
