/** How counts and chances are written, with no more figures than they have. */
import type { Spread } from '../../src/husbandry/supply/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';

/** How certain a sentence sounds: a chance's half-width is 1.96 standard errors. */
const HALF_WIDTH = 1.96;

/** '1 meal', '3 meals', '2 spiderlings'; another plural may be given. */
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** '7 days', '3 to 7 days'. */
export const span = ([least, most]: readonly [number, number], unit: string): string =>
  least === most ? `${least} ${unit}` : `${least} to ${most} ${unit}`;

const VAGUE_SHARE = 0.1;
const WHOLE_BELOW = 20;
const FIVES_BELOW = 100;

/** No more figures than a guess has: whole below 20, fives below 100, then two figures. */
export function roundly(n: number): number {
  if (n < WHOLE_BELOW) return Math.round(n);
  const step = n < FIVES_BELOW ? 5 : 10 ** (Math.floor(Math.log10(n)) - 1);
  return Math.round(n / step) * step;
}

const GUESS_TIMES = 5;

/** Whether a count is so old that its band says more than its middle. */
export const isGuess = ({ low, high }: Spread): boolean => high > GUESS_TIMES * Math.max(1, low);

/** '120' when somebody has just counted, 'about 340' when the count is vague, '30 to 1300' when it is a guess. */
export function aboutHeads({ low, mid, high }: Spread): string {
  if (high < 1) return 'none';
  if (isGuess({ low, mid, high })) return `${roundly(low)} to ${roundly(high)}`;
  const vague = high - low > Math.max(1, mid * VAGUE_SHARE);
  return vague ? `about ${roundly(mid)}` : `${Math.round(mid)}`;
}

/** An expected number: 'none', 'under 1', 'about 6'. */
export function expected(n: number): string {
  if (n < EXPECTED_NONE) return 'none';
  return n < 1 ? 'under 1' : `about ${roundly(n)}`;
}
const EXPECTED_NONE = 0.005;

const FREQUENCIES: readonly (readonly [number, number])[] = [
  [1, 20],
  [1, 10],
  [1, 5],
  [1, 4],
  [1, 3],
  [2, 5],
  [1, 2],
  [3, 5],
  [2, 3],
  [3, 4],
  [4, 5],
  [9, 10],
  [19, 20],
];
const NEARLY_NEVER = 0.03;
const NEARLY_EVERY = 0.97;

/** A chance as a frequency: 'about 4 weeks in 5'; never none and never all. */
export const weeksIn = (chance: number): string => frequency(chance, 'week');
/** 'about 4 cases in 5'. */
export const casesIn = (chance: number): string => frequency(chance, 'case');

function frequency(chance: number, unit: string): string {
  if (chance > NEARLY_EVERY) return `more than 19 ${unit}s in 20`;
  if (chance < NEARLY_NEVER) return `fewer than 1 ${unit} in 20`;
  const distance = ([n, of]: readonly [number, number]) => Math.abs(n / of - chance);
  const [n, of] = FREQUENCIES.reduce((best, next) => (distance(next) < distance(best) ? next : best));
  return `about ${counted(n, unit)} in ${of}`;
}

/** A small chance: 'about 1 in 60'. */
export const oneIn = (chance: number): string => `about 1 in ${roundly(1 / chance).toLocaleString('en-GB')}`;

/** '83 %', 'under 1 %', 'over 99 %'. */
export function percent(chance: number): string {
  const whole = Math.round(chance * PERCENT);
  if (whole < 1) return 'under 1 %';
  return whole >= PERCENT ? 'over 99 %' : `${whole} %`;
}

/** What chance alone may add to a percentage, in points: 'give or take 3'. */
export const giveOrTake = (standardError: number): string =>
  `give or take ${Math.max(1, Math.ceil(standardError * HALF_WIDTH * PERCENT))}`;
