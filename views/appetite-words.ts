/** Appetite and refusals as a keeper would say them. */

import type { Intake, MealShare, RefusalsSeen } from '../src/husbandry/appetite/index.ts';
import { DAYS_PER_WEEK, PERCENT } from '../src/husbandry/units.ts';
import type { NumbersTable } from './charts/figure.tsx';
import { counted, listed, oneOf, recordDay, roundly, sentenceCase } from './format.ts';

const WHOLE_FROM = 10;
const TENTHS = 10;

/** A share as a bare percentage: a decimal below 10. */
function bare(share: number): string {
  const percent = share * PERCENT;
  return `${percent >= WHOLE_FROM ? Math.round(percent) : Math.round(percent * TENTHS) / TENTHS}`;
}

/** '8 %', '1.3 %', '31 %'. */
const share = (of: number): string => `${bare(of)} %`;

const weeks = (days: number): string => counted(Math.max(1, Math.round(days / DAYS_PER_WEEK)), 'week');

/** What it eats a week against what is right, and what that rests on. */
export function intakeWords(intake: Intake | null, stageWord: string): string {
  if (intake === null)
    return 'Its appetite can be told from three meals on, when prey and sizes are written down with them.';
  const { weekly, need, meals, days } = intake;
  const right = `${bare(need[0])} to ${share(need[1])}`;
  const eats = `It eats about ${share(weekly.mid)} of its own mass a week`;
  const points = bare((weekly.high - weekly.low) / 2);
  const rests = `From ${counted(meals, 'meal')} in ${weeks(days)}, give or take ${points} ${points === '1' ? 'point' : 'points'}.`;
  return `${eats}, ${judgement(intake, right, stageWord)} ${rests}`;
}

function judgement({ verdict, unsure }: Intake, right: string, stageWord: string): string {
  if (verdict === 'right') return `which is right for ${oneOf(stageWord)}: ${right}.`;
  const [word, act] =
    verdict === 'too much' ? ['more', 'Offer less, or less often.'] : ['less', 'Offer more, or more often.'];
  if (unsure) return `perhaps ${word} than the ${right} right for ${oneOf(stageWord)}; that is not sure yet.`;
  return `${word} than the ${right} right for ${oneOf(stageWord)}. ${act}`;
}

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const PHASES: Readonly<Record<RefusalsSeen['phase'], string>> = {
  'close to a moult': 'this close to a moult',
  'between moults': 'at this point of its cycle',
  'moults no more': 'for one that moults no more',
};

/** Refusals in a row, usual or not, with what to do; null when there are none. */
export function refusalWords(seen: RefusalsSeen | null): string | null {
  if (seen === null) return null;
  const { inRow, chance, usual, phase } = seen;
  const number = NUMBERS[inRow] ?? `${inRow}`;
  const many = inRow === 1 ? 'One refusal is' : `${sentenceCase(number)} refusals in a row are`;
  if (usual) return `${many} usual ${PHASES[phase]}.`;
  return `${many} unusual ${PHASES[phase]}: ${oneIn(chance)}. Look at it; a vet if it is thin, weak or hurt.`;
}

const RAREST = 1000;

function oneIn(chance: number): string {
  return chance < 1 / RAREST ? `fewer than 1 in ${RAREST}` : `about 1 in ${roundly(1 / chance)}`;
}

const isEaten = ({ outcome }: MealShare): boolean => outcome !== 'refused';

/** '9 meals and 3 refusals in 10 weeks'. */
export function mealsFinding(meals: readonly MealShare[], days: number): string {
  const eaten = meals.filter(isEaten).length;
  const refused = meals.length - eaten;
  const told = [
    ...(eaten > 0 ? [counted(eaten, 'meal')] : []),
    ...(refused > 0 ? [counted(refused, 'refusal')] : []),
  ];
  return `${sentenceCase(listed(told))} in ${weeks(days)}`;
}

export const mealsTable = (meals: readonly MealShare[]): NumbersTable => ({
  caption: 'Meals offered and what became of them',
  head: ['Day', 'Outcome', 'Share of own mass'],
  rows: meals.map(({ day, outcome, share: of }) => [
    recordDay(day),
    outcome,
    of === null ? 'not known' : outcome === 'refused' ? '–' : share(of),
  ]),
});
