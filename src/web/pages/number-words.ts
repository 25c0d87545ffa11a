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
  if (measure === 'price') return priceWords(number);
  return figures.map((figure) => [figureWords(number, figure), figure.at].join(' ').trim()).join(', ');
}

function figureWords({ measure, sourced }: BookNumber, { value }: Figure): string {
  if (measure === 'share' || measure === 'spread') return `${inDigits(value * PERCENT)} %`;
  if (measure === 'temperature' || measure === 'degrees') return `${inDigits(value)} °C`;
  if (measure === 'days' || measure === 'weeks' || measure === 'minutes')
    return `${inDigits(value)} ${value === 1 ? measure.slice(0, -1) : measure}`;
  if (measure === 'laid' || measure === 'times') return inDigits(value);
  const unit = sourced?.unit ?? '1';
  return unit === '1' ? inDigits(value) : `${inDigits(value)} ${unit}`;
}

/** '20 for fragile animals, 6 for robust animals, times the cheapest item': of several the unit is said once. */
function priceWords({ figures, sourced }: BookNumber): string {
  const unit = sourced?.unit ?? '';
  const said = figures.map(({ value, at }) => `${inDigits(value)} ${at}`.trim());
  return figures.length === 1 ? `${said[0]} ${unit}` : `${said.join(', ')}, ${unit}`;
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
