/** What the figures of a rule must be to each other; the first that is not is a Problem that says what would be right. */

import type { Kind, StageValues } from '../husbandry/animals/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { inPercent } from '../husbandry/units.ts';

const swapped = (field: string, sentence: string): Problem => problem('ends-swapped', sentence, field);

/** Why a rule of these values cannot stand, or null. */
export const whyNotRule = (values: StageValues, facts: Facts): Problem | null =>
  wrongWindow(values) ?? wrongRange(values) ?? wrongDanger(values) ?? wrongPrey(values, facts);

function wrongWindow({ window: { min, ideal, max, killFirstAbove } }: StageValues): Problem | null {
  if (min >= ideal) {
    const best = inPercent(ideal);
    return swapped(
      'windowMin',
      `"${inPercent(min)}" is not below the best length; write less than ${best} %.`,
    );
  }
  if (ideal >= max) {
    const best = inPercent(ideal);
    return swapped(
      'windowMax',
      `"${inPercent(max)}" is not above the best length; write more than ${best} %.`,
    );
  }
  if (killFirstAbove === null || (ideal < killFirstAbove && killFirstAbove <= max)) return null;
  const between = `more than ${inPercent(ideal)} % and at most ${inPercent(max)} %`;
  return problem(
    'out-of-window',
    `"${inPercent(killFirstAbove)}" lies outside what is taken; write ${between}, or leave it empty.`,
    'killFirstAbove',
  );
}

function wrongRange({ mealItems, intervalDays, weeklyNeed }: StageValues): Problem | null {
  const backwards = (field: string, [least, most]: readonly [string, string]): Problem =>
    swapped(field, `"${most}" is less than the least (${least}); write ${least} or more.`);
  if (mealItems[0] > mealItems[1]) return backwards('itemsMost', [`${mealItems[0]}`, `${mealItems[1]}`]);
  if (intervalDays[0] > intervalDays[1])
    return backwards('intervalMost', [`${intervalDays[0]}`, `${intervalDays[1]}`]);
  return weeklyNeed[0] > weeklyNeed[1]
    ? backwards('needMost', [`${inPercent(weeklyNeed[0])}`, `${inPercent(weeklyNeed[1])}`])
    : null;
}

/** A danger never comes before the meal counts as missed. */
function wrongDanger({ intervalDays, graceDays, safeGapDays }: StageValues): Problem | null {
  const least = intervalDays[1] + graceDays;
  if (safeGapDays >= least) return null;
  const missed = `a meal is missed only after ${intervalDays[1]} + ${graceDays} days`;
  return problem(
    'danger-before-missed',
    `"${safeGapDays}" days without food would be a danger too soon: ${missed}; write ${least} or more.`,
    'safeGapDays',
  );
}

function wrongPrey({ accepts, refusesHard }: StageValues, { species }: Facts): Problem | null {
  const eaten = [...species.values()].some(
    ({ form, traits }) => accepts.includes(form) && !(refusesHard && traits.hard),
  );
  if (eaten) return null;
  const sentence = `"${accepts.join(', ')}" is all refused as too hard; choose softer prey as well.`;
  return problem('nothing-to-eat', sentence, 'accepts');
}

/** Why a kind of these sizes cannot stand, or null. */
export function whyNotSizes({
  adultGaugeMm: adult,
  firstFeedingGaugeMm: first,
}: Pick<Kind, 'adultGaugeMm' | 'firstFeedingGaugeMm'>): Problem | null {
  const backwards = (field: string, [least, most]: readonly [number, number]): Problem =>
    swapped(field, `"${most} mm" is less than the smallest (${least} mm); write ${least} mm or more.`);
  if (first.value[0] > first.value[1]) return backwards('firstMost', first.value);
  if (adult.value[0] > adult.value[1]) return backwards('adultMost', adult.value);
  return first.value[1] < adult.value[0]
    ? null
    : swapped(
        'firstMost',
        `"${first.value[1]} mm" is not below a grown one; write less than ${adult.value[0]} mm.`,
      );
}
