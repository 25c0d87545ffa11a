/** What the plan of the room asks for before the next Sunday; nothing where no plan of the room as it is was made. */
import type { PlannedWeek } from '../../../views/pages/sunday-plan.tsx';
import { keptPlan, usualPlanQuestion } from '../../actions/index.ts';
import { sundaySteps } from '../../husbandry/plan/index.ts';
import type { CoverAnswer } from '../../husbandry/supply/index.ts';
import type { House } from './house.ts';
import { shownFresh } from './plan-told.ts';
import type { Visit } from './visit.ts';

export async function weekPlanned(
  { context }: House,
  here: Visit,
  cover: CoverAnswer,
): Promise<PlannedWeek | null> {
  const question = await usualPlanQuestion(context);
  const plan = await keptPlan(context, question, here.snapshot);
  if (plan === null) return null;
  const { told } = shownFresh(plan, question, here);
  const steps = sundaySteps(plan, cover);
  return told === null || steps.length === 0 ? null : { told, steps };
}
