/** A verdict in words: how often nobody misses a meal, how sure that is, what is missed. */
import type { Chance, Shortfall, Verdict } from '../../src/husbandry/supply/index.ts';
import { expected, giveOrTake, percent, roundly, weeksIn } from '../format.ts';
import { VerdictMark } from './icons.tsx';

/** The verdict as a word with its jar. */
export const VerdictWord = ({ verdict }: { verdict: Verdict }) => (
  <span class="verdict-word">
    <VerdictMark verdict={verdict} /> {verdict}
  </span>
);

/** 'about 4 weeks in 5 (81 %, give or take 3)'. */
export const chanceInFull = ({ chance, standardError }: Chance): string =>
  `${weeksIn(chance)} (${percent(chance)}, ${giveOrTake(standardError)})`;

/** 'about 6 missed, about 2 late', leaving out what is none. */
export function shortfallWords({ missedMeals, lateMeals, dangers }: Shortfall): string {
  const words = [
    ...(dangers >= SHOWN_FROM
      ? [`${perhaps(dangers)} ${roundly(dangers) <= 1 ? 'animal' : 'animals'} in danger`]
      : []),
    ...(missedMeals >= SHOWN_FROM ? [`${perhaps(missedMeals)} missed`] : []),
    ...(lateMeals >= SHOWN_FROM ? [`${perhaps(lateMeals)} late`] : []),
  ];
  return words.length === 0 ? 'none missed' : words.join(', ');
}

/** An expected number that a sentence counts: less than one is 'perhaps 1'. */
const perhaps = (n: number): string => (n < 1 ? 'perhaps 1' : expected(n));
/** Rarer than once in twenty checks is not worth a word. */
export const SHOWN_FROM = 0.05;
