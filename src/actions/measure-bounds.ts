/** Within what bounds a figure of the Book must be, by what it measures; shares are typed in percent. */
import type { z } from 'zod';
import type { BookNumber, Measure } from '../facts/own/book-number.ts';
import { PERCENT } from '../husbandry/units.ts';
import { figureWithin } from './fields.ts';

interface Bounds {
  readonly least: number;
  readonly most: number;
  /** What it is, before its bounds: 'a temperature'. */
  readonly a: string;
  /** After the greatest: ' °C'. */
  readonly unit?: string;
  readonly whole?: true;
}

const BOUNDS: Readonly<Record<Measure, Bounds>> = {
  share: { least: 0, most: 100, a: 'a share', unit: ' %' },
  spread: { least: 5, most: 150, a: 'a spread', unit: ' % of the mean' },
  temperature: { least: -5, most: 60, a: 'a temperature', unit: ' °C' },
  degrees: { least: 0, most: 10, a: 'a difference', unit: ' °C' },
  days: { least: 0.2, most: 3000, a: 'a time', unit: ' days' },
  weeks: { least: 1, most: 260, a: 'a whole number', unit: ' weeks', whole: true },
  minutes: { least: 0, most: 600, a: 'a time', unit: ' minutes' },
  'degree-days': { least: 1, most: 20_000, a: 'a sum of warmth', unit: ' degree-days' },
  laid: { least: 0, most: 2000, a: 'a number a day' },
  boxes: { least: 0.5, most: 1000, a: 'a number of boxes' },
  heads: { least: 1, most: 100_000, a: 'a number' },
  length: { least: 0.1, most: 150, a: 'a length', unit: ' mm' },
  mass: { least: 0.0001, most: 2, a: 'a mass', unit: ' mg for a body one millimetre long' },
  times: { least: 0, most: 20, a: 'a factor' },
  price: { least: 0, most: 10_000, a: 'a price', unit: ' times an item’s' },
  deaths: { least: 0, most: 1, a: 'a number of deaths per head and day' },
  eaten: { least: 0, most: 5, a: 'a number' },
};

const IN_PERCENT: readonly Measure[] = ['share', 'spread'];
/** Figures a share is kept to, so that what is typed in percent leaves no dust of binary fractions. */
const FIGURES_KEPT = 12;
/** Figures shown; what is left as shown is no change. */
const FIGURES_SHOWN = 4;
const WHOLE_FROM = 1000;

/** A figure as its field shows it: shares in percent. */
export function figureShown(measure: Measure, value: number): string {
  const shown = IN_PERCENT.includes(measure) ? value * PERCENT : value;
  return `${shown < WHOLE_FROM ? Number(shown.toPrecision(FIGURES_SHOWN)) : Math.round(shown)}`;
}

type Bounded = Pick<BookNumber, 'measure' | 'within'>;

/** The least and the greatest a figure may be, as typed. */
export const figureEnds = ({ measure, within }: Bounded): readonly [number, number] =>
  within ?? [BOUNDS[measure].least, BOUNDS[measure].most];

/** The unit a figure is typed in, '' where it has none of its own. */
export const unitTyped = (measure: Measure): string => (BOUNDS[measure].unit ?? '').trim();

/** The field a figure is typed into. */
export function figureField(number: Bounded): z.ZodType<number, string | number> {
  const { a, unit = '', whole = false } = BOUNDS[number.measure];
  const [least, most] = figureEnds(number);
  const wanted = `${a} from ${least} to ${most.toLocaleString('en-GB')}${unit}`;
  return figureWithin({ code: 'number-out-of-range', least, most, wanted, whole });
}

/** What was typed, as the Book keeps it. */
export const figureKept = (measure: Measure, typed: number): number =>
  IN_PERCENT.includes(measure) ? Number((typed / PERCENT).toPrecision(FIGURES_KEPT)) : typed;
