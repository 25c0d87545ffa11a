/** Front door: how days, lengths, counts and chances are written for a keeper. */
export { fewOf, listed, oneOf, sentenceCase } from '../src/husbandry/words.ts';
export {
  aboutHeads,
  casesIn,
  counted,
  expected,
  giveOrTake,
  isGuess,
  oneIn,
  percent,
  roundly,
  span,
  weeksIn,
} from './format/amounts.ts';
export {
  ago,
  DAY_OPTIONS,
  dayRange,
  fullDay,
  longDay,
  partOfMonth,
  parts,
  recordDay,
  shortDay,
  spell,
  WEEKDAYS,
  writtenDay,
  yearOf,
} from './format/days.ts';
export { inches, type LengthUnit, lengthRange, lengthText } from './format/lengths.ts';
export { headPrice, money } from './format/money.ts';
