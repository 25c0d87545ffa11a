/** What an animal eats by its rule, in words: 'takes 11–15 mm, best 13 mm: medium house crickets'. */

import type { Window } from '../../../views/charts/window-bracket.tsx';
import { type LengthUnit, lengthRange, lengthText, span } from '../../../views/format.ts';
import { sizeWord } from '../../husbandry/prey/index.ts';
import type { Diet } from '../../husbandry/supply/index.ts';
import { MG_PER_GRAM, PERCENT } from '../../husbandry/units.ts';
import { plural } from '../../husbandry/words.ts';

const FIGURES = 2;

/** '2.1 %', with as many figures as it deserves. */
const smallPercent = (share: number): string => `${Number((share * PERCENT).toPrecision(FIGURES))} %`;

/** The window the ruler shows; by the rule alone where no prey in the Book suits. */
export function windowOf({ window, rule, eater }: Diet): Window {
  if (window !== null) return window;
  const { min, ideal, max } = rule.window.value;
  const mm = (share: number) => share * eater.referenceMm;
  return { minMm: mm(min), idealMm: mm(ideal), maxMm: mm(max) };
}

/** 'takes 11–15 mm, best 13 mm: medium house crickets'. */
export function takesWords(diet: Diet, unit: LengthUnit): string {
  const { minMm, idealMm, maxMm } = windowOf(diet);
  const lengths = `takes ${lengthRange(minMm, maxMm, unit)}, best ${lengthText(idealMm, unit)}`;
  return `${lengths}: ${tradeWords(diet)}`;
}

/** 'pinhead to small house crickets', the best size first where they are many. */
function tradeWords({ trade, window }: Diet): string {
  if (window === null) return 'no prey of the Book suits it';
  if (trade === null || trade.best === null) return 'no size the trade sells';
  return `${sizeWord(trade.best)} ${plural(trade.species.commonName)}`;
}

/** 'pinhead to medium house crickets': all sizes taken. */
export function allSizesWords({ trade }: Diet): string {
  const [first, last] = [trade?.taken[0], trade?.taken.at(-1)];
  if (trade === null || first === undefined || last === undefined) return 'no size the trade sells';
  const words = first === last ? sizeWord(first) : `${sizeWord(first)} to ${sizeWord(last)}`;
  return `${words} ${plural(trade.species.commonName)}`;
}

/** '1 to 2 every 3 to 7 days'. */
export const oftenWords = ({ rule, interval }: Diet): string => {
  const [least, most] = rule.mealItems.value;
  const items = least === most ? `${least}` : `${least} to ${most}`;
  const every =
    interval.min === 1 && interval.max === 1
      ? 'every day'
      : `every ${span([interval.min, interval.max], 'days')}`;
  return `${items} ${every}`;
};

/** 'too much: 4.7 % of its own mass a week, where 0.8 % to 2.5 % is its need'. */
export function needWords({ rule, weeklyShare, enough }: Diet): string {
  const [least, most] = rule.weeklyNeed.value;
  const need = `${smallPercent(least)} to ${smallPercent(most)}`;
  const verdict = enough === 'right' ? 'about right' : enough;
  return `${verdict}: ${smallPercent(weeklyShare)} of its own mass a week; its need is ${need}`;
}

/** '3.1 g', '40 mg'. */
export const massWords = (mg: number): string =>
  mg >= MG_PER_GRAM
    ? `${Number((mg / MG_PER_GRAM).toPrecision(FIGURES))} g`
    : `${Number(mg.toPrecision(FIGURES))} mg`;
