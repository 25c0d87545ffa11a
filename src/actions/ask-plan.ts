/** Asks for a plan, and for the last good one while it is being made. */
import type { PlanAnswer, PlanQuestion } from '../husbandry/plan/index.ts';
import type { Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { settings } from '../store/index.ts';
import { type Asking, ask, askKept, askLast } from './ask.ts';
import type { Context } from './context.ts';
import { nameOf } from './questions.ts';

/** Made now, or kept for this revision and day. */
export const askPlan = (
  context: Context,
  question: PlanQuestion,
  where: Omit<Asking<'plan'>, 'options'> = {},
): Promise<Result<PlanAnswer>> => ask(context, 'plan', { ...where, options: question });

/** The plan kept for this revision and day, or null: it takes a while to make. */
export const keptPlan = (
  context: Context,
  question: PlanQuestion,
  snapshot: Snapshot,
): Promise<PlanAnswer | null> => askKept(context, 'plan', { options: question, snapshot });

/** The question for a plan of the room as it is, for as many weeks as the keeper plans, with nothing wished. */
export async function usualPlanQuestion({ store }: Context): Promise<PlanQuestion> {
  const { planWeeks } = await store.ask(settings);
  return { weeks: planWeeks, wishes: [], supposed: [] };
}

/** The latest plan made for the question, else for the room as it is without wishes; its day and revision tell its age. */
export const lastPlan = async (context: Context, question: PlanQuestion): Promise<PlanAnswer | null> =>
  (await askLast(context, 'plan', question)) ?? askLast(context, 'plan', bare(question));

const bare = ({ weeks }: PlanQuestion): PlanQuestion => ({ weeks, wishes: [], supposed: [] });

/** What the question is called while it is answered: how far it is, and how it is stopped, is asked by this name. */
export const planName = (question: PlanQuestion): string => nameOf('plan', question);
