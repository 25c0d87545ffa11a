/** Lengths as keepers write them, in inches, centimetres or millimetres, read into millimetres. */
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { MM_PER_CM, MM_PER_INCH, type Mm } from '../../husbandry/units.ts';
import { quote } from '../quoting.ts';
import { readAmount } from './number.ts';

export const LENGTH_UNITS = ['mm', 'cm', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

export interface LengthRead {
  /** The middle when a range was written. */
  readonly mm: Mm;
  readonly fromMm: Mm;
  readonly toMm: Mm;
  /** Whether a range was written. */
  readonly range: boolean;
}

const LONGEST_MM = 400;
const LONGEST_TEXT = 60;
const MM_PER_METRE = 1000;
const MM_PER_FOOT = 304.8;

const UNITS: readonly (readonly [RegExp, Mm])[] = [
  [/^(mm|mms|millimet(er|re)s?|milimetros?)$/, 1],
  [/^(cm|cms|centimet(er|re)s?|zentimeter|centimetros?)$/, MM_PER_CM],
  [/^("|in|ins|inch|inches|zoll|pouces?|pulgadas?)$/, MM_PER_INCH],
  [/^(m|met(er|re)s?|metros?)$/, MM_PER_METRE],
  [/^('|ft|foot|feet)$/, MM_PER_FOOT],
];

const VULGAR: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const AMOUNT = String.raw`\d+[ -]\d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?|[.,]\d+`;
const UNIT = String.raw`["']|\p{L}+`;
const LENGTH = new RegExp(
  `^(-?)(${AMOUNT})\\s*(${UNIT})?\\.?(?:\\s*(?:-|to|bis|a)\\s*(${AMOUNT})\\s*(${UNIT})?\\.?)?$`,
  'u',
);
/** A comma before three digits may part thousands or decimals: not clear. */
const UNCLEAR = /\d,\d{3}(?!\d)/;

const tidied = (text: string): string =>
  text
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/[“”″„]|''/g, '"')
    .replace(/[’′]/g, "'")
    .replace(/[–—−]/g, '-')
    .toLowerCase()
    .replace(/\b(ca|approx|approximately|about|around|circa|roughly|etwa|environ|unos)\b\.?/g, ' ')
    .replace(/\b(dls|ls|leg ?span)\b|[~≈<>+±()]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

const mmPer = (unit: string): Mm | null => UNITS.find(([pattern]) => pattern.test(unit))?.[1] ?? null;

/** The unit a cell or heading names, or null: "inches", 'Size (mm)'. */
export function readUnit(text: string): LengthUnit | null {
  const named = (text.toLowerCase().match(/\p{L}+|["”″]/gu) ?? [])
    .map((word) => mmPer(word.replace(/["”″]/, '"')))
    .findLast((mm) => mm !== null);
  if (named === MM_PER_INCH) return 'in';
  if (named === MM_PER_CM) return 'cm';
  return named === 1 ? 'mm' : null;
}

const notALength = (text: string): Problem =>
  problem(
    'not-a-size',
    `${quote(text)} is not a size that can be read; write it as 18 mm, 1.8 cm or 3/4 in.`,
    'size',
  );

const noUnit = (text: string): Problem =>
  problem(
    'size-without-unit',
    `${quote(text)} has no unit; write it as ${text} mm, ${text} cm or ${text} in, or give one unit for the whole file.`,
    'size',
  );

const outOfRange = (text: string): Problem =>
  problem(
    'size-out-of-range',
    `${quote(text)} is not a likely size; it should be more than 0 and at most ${LONGEST_MM} mm.`,
    'size',
  );

const UNIT_MM: Readonly<Record<LengthUnit, Mm>> = { mm: 1, cm: MM_PER_CM, in: MM_PER_INCH };

/** Inches leave crumbs of binary fractions; a thousandth of a millimetre is enough. */
const toMicrometre = (mm: Mm): Mm => Math.round(mm * 1000) / 1000;

/** Reads one length or a range; a bare number takes `defaultUnit`, and without one is a Problem. */
export function readLength(text: string, defaultUnit: LengthUnit | null): Result<LengthRead> {
  const clean = tidied(text);
  const match = UNCLEAR.test(clean) || clean.length > LONGEST_TEXT ? null : LENGTH.exec(clean);
  if (!match) return err(notALength(text));
  const [, minus, first = '', firstUnit, second, secondUnit] = match;
  const unit = secondUnit ?? firstUnit;
  const toUnit = unit === undefined ? defaultUnit && UNIT_MM[defaultUnit] : mmPer(unit);
  const fromUnit = firstUnit === undefined ? toUnit : mmPer(firstUnit);
  const from = readAmount(first);
  const to = second === undefined ? from : readAmount(second);
  if (minus === '-' || from === 0) return err(outOfRange(text));
  if (unit === undefined && toUnit === null) return err(noUnit(text));
  if (from === null || to === null || fromUnit === null || toUnit === null) return err(notALength(text));
  const ends = [toMicrometre(from * fromUnit), toMicrometre(to * toUnit)].sort((a, b) => a - b) as [Mm, Mm];
  if (ends[0] <= 0 || ends[1] > LONGEST_MM) return err(outOfRange(text));
  const range = second !== undefined;
  return ok({ mm: toMicrometre((ends[0] + ends[1]) / 2), fromMm: ends[0], toMm: ends[1], range });
}
