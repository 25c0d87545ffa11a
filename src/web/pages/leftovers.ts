/** Who is likely to have left food, by what became of its meals before. */
import type { Policy } from '../../husbandry/policy.ts';
import type { MealOutcome } from '../../store/index.ts';

/** Why a look is worth it, in a few words; null when nothing on record says so. Outcomes come newest first. */
export function likelyLeft(outcomes: readonly MealOutcome[], policy: Policy): string | null {
  const [last] = outcomes;
  if (last === 'part-taken') return 'left some last time';
  if (last === 'refused') {
    const accepted = outcomes.findIndex((outcome) => outcome !== 'refused');
    const inRow = accepted < 0 ? outcomes.length : accepted;
    return inRow > 1 ? `refused the last ${inRow} times` : 'refused last time';
  }
  const taken = outcomes.filter((outcome) => outcome !== 'refused').length;
  const seldom =
    outcomes.length >= policy.seldomTakesOffers.value &&
    taken < outcomes.length * policy.seldomTakesShare.value;
  return seldom ? `took ${taken} of its last ${outcomes.length} meals` : null;
}
