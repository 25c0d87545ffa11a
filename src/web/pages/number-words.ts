/** A number of the Book in words: every figure of it with its unit. */
import { type LengthUnit, lengthRange, lengthText } from '../../../views/format.ts';
import type { BookNumber, Figure } from '../../facts/own/book-number.ts';
import { PERCENT } from '../../husbandry/units.ts';

const DIGITS = 3;
const inDigits = (value: number): string => `${Number(value.toPrecision(DIGITS))}`;

/** '66.3 days at 30 °C, 200 days at 18 °C'. */
export function numberWords(number: BookNumber, unit: LengthUnit): string {
  const { figures, measure } = number;
  if (measure === 'length') return lengthWords(figures, unit);
  return figures.map((figure) => [figureWords(number, figure), figure.at].join(' ').trim()).join(', ');
}

function figureWords({ measure, sourced }: BookNumber, { value }: Figure): string {
  if (measure === 'share' || measure === 'spread') return `${inDigits(value * PERCENT)} %`;
  if (measure === 'temperature' || measure === 'degrees') return `${inDigits(value)} °C`;
  if (measure === 'days') return `${inDigits(value)} ${value === 1 ? 'day' : 'days'}`;
  if (measure === 'laid' || measure === 'times') return inDigits(value);
  const unit = sourced?.unit ?? '1';
  return unit === '1' ? inDigits(value) : `${inDigits(value)} ${unit}`;
}

/** One length, or the sizes that are sold: each told by where it begins and where it ends. */
function lengthWords(figures: readonly Figure[], unit: LengthUnit): string {
  const [one] = figures;
  if (figures.length === 1 && one !== undefined) return lengthText(one.value, unit);
  return figures
    .flatMap((from, i) => {
      const to = figures[i + 1];
      return i % 2 === 1 || to === undefined
        ? []
        : [`${from.at.replace(/ from$/, '')} ${lengthRange(from.value, to.value, unit)}`];
    })
    .join(', ');
}
