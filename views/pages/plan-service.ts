/** How well a plan serves, in words: who goes short, what it costs, how far it is proven. */
import type { Urgency } from '../../src/husbandry/animals/index.ts';
import type { Estimate, PlanAnswer, Service } from '../../src/husbandry/plan/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';
import { counted, roundly, sentenceCase } from '../format.ts';

const TENTHS = 10;
/** '99.5 %', '98 %', never broken over two lines; a share that is not whole is never said to be. */
export function shareText(share: number): string {
  const tenths = Math.round(share * PERCENT * TENTHS) / TENTHS;
  if (tenths === PERCENT && share < 1) return 'over 99.9\u00a0%';
  return `${tenths}\u00a0%`;
}

/** '12 to 19 missed meals', 'no missed meals'. */
export function estimateWords(estimate: Estimate, one: string): string {
  const figures = estimateText(estimate);
  if (figures === 'none') return `no ${one}s`;
  return figures === '1' ? `1 ${one}` : `${figures} ${one}s`;
}

/** '12 to 19', 'none'. */
export function estimateText({ low, high }: Estimate): string {
  const [from, to] = [Math.max(0, roundly(low)), Math.max(0, roundly(high))];
  if (to === 0) return 'none';
  return from === to ? `${to}` : `${from} to ${to}`;
}

/** 'never', 'once', '3 to 5 times'. */
export function timesText(estimate: Estimate): string {
  const figures = estimateText(estimate);
  if (figures === 'none') return 'never';
  return figures === '1' ? 'once' : `${figures} times`;
}

export const CLASS_NAMES: Readonly<Record<Urgency, string>> = {
  fragile: 'fragile animals',
  ordinary: 'ordinary animals',
  robust: 'robust animals',
};

const HALF = 0.5;

/** 'Nobody goes short', 'Fragile animals go short: 97 % of their meals are served, 99.5 % is asked'. */
export function serviceWords({ whole }: PlanAnswer): string {
  const due = whole.service.reduce((sum, { mealsDue }) => sum + mealsDue, 0);
  if (due === 0) return 'Nobody has to be fed';
  const short = whole.service.filter(({ met }) => !met);
  if (short.length > 0) return short.map(shortWords).join('. ');
  const missed = roundly(whole.missedMeals.mean);
  return missed < 1 && whole.dangers.mean < HALF
    ? 'Nobody goes short'
    : `${sentenceCase(counted(Math.max(1, missed), 'meal'))} of ${roundly(due).toLocaleString('en-GB')} may be missed, no more than you allow`;
}

const shortWords = ({ urgency, notMissed, target }: Service): string =>
  `${sentenceCase(CLASS_NAMES[urgency])} go short: ${shareText(notMissed.mean)} of their meals are served, ${shareText(target)} is asked`;

/** A smaller gap is told as this one. */
const LEAST_GAP = 0.001;

/** How far the plan it grew out of is proven to be the best, where everything comes as it does in the mean. */
export function provenWords({ made, gap, trouble }: PlanAnswer): string {
  const bound =
    gap === null
      ? 'How near it comes to the best there is was not proven.'
      : `It grew out of the best plan for average weeks, proven to within ${shareText(Math.max(gap, LEAST_GAP))}, and was then fitted to good and bad luck.`;
  if (made === 'programme') return bound;
  const why =
    trouble === null ? '' : `: ${trouble.charAt(0).toLowerCase()}${trouble.slice(1).replace(/\.$/, '')}`;
  return `This plan was made by rule${why}. It can be carried out. ${bound}`;
}
