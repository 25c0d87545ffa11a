/** What a plan asks for before the next Sunday, as the Sunday question is answered by it. */
import { nextSunday } from '../calendar.ts';
import type { CoverAnswer } from '../supply/index.ts';
import type { PlanAnswer } from './answer.ts';
import { type PlanStep, stepsOf } from './steps.ts';

/**
 * Steps of a plan of the same room, the most urgent first; none where they are no answer. Where the room runs short, one
 * of them must feed a group that does within the days looked at, and those that do come first: what makes little
 * difference, can be done next week or is too many is no answer to tonight.
 */
export function sundaySteps({ lines }: PlanAnswer, cover: CoverAnswer): readonly PlanStep[] {
  if (cover.verdict === 'empty') return [];
  const next = nextSunday(cover.day);
  const steps = stepsOf(lines.filter(({ actBy }) => actBy < next)).toSorted(doneFirst);
  if (cover.verdict !== 'runs short') return steps;
  const feeds = feedsIn(cover);
  const first = steps.filter(feeds);
  return first.length === 0 ? [] : [...first, ...steps.filter((step) => !feeds(step))];
}

/** Leaving alone asks for nothing to be done. */
const doneFirst = (a: PlanStep, b: PlanStep): number =>
  Number(a.line.what === 'rest') - Number(b.line.what === 'rest');

/** Whether a step feeds somebody who runs short within the days looked at. */
function feedsIn({ day, horizonDays, groups }: CoverAnswer): (step: PlanStep) => boolean {
  const short = groups
    .filter((group) => group.verdict !== 'lasts' || group.dangers > 0)
    .map(({ key }) => key);
  return ({ lines }) =>
    lines.some(
      ({ reason }) =>
        reason?.makesLittleDifference === false &&
        reason.feeds.some(({ group, from }) => short.includes(group) && from < day + horizonDays),
    );
}
