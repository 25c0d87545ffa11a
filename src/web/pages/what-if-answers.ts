/** The plans of what is supposed, as far as they are made, and how the page tells them. */
import type { Working } from '../../../views/pages/plan-working.tsx';
import type { WhatIfShown } from '../../../views/pages/what-if.tsx';
import { togetherWords } from '../../../views/pages/what-if-words.ts';
import { entryOf } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { type WhatIfAsked, whatIfAt, whatIfQuery } from '../../../views/plan-address.ts';
import { askPlan, keptPlan, planName } from '../../actions/index.ts';
import { decidedIn, type PlanAnswer, type PlanQuestion } from '../../husbandry/plan/index.ts';
import type { Problem } from '../../husbandry/problems.ts';
import type { House } from './house.ts';
import { marketIn } from './supplier-views.ts';
import type { Visit } from './visit.ts';

/** The plan as it is, then one for each thing supposed; these are compared, not explained. */
export const questionsOf = ({ weeks, ifs }: WhatIfAsked): readonly PlanQuestion[] => [
  { weeks, wishes: [], supposed: [] },
  ...ifs.map((supposed) => ({ weeks, wishes: [], supposed, explained: false })),
];

/** The question, told what the plan as it is decides. */
export const beside = (question: PlanQuestion, base: PlanAnswer | null): PlanQuestion =>
  base === null ? question : { ...question, beside: decidedIn(base.lines) };

export interface Answers {
  /** One for each question, null where it is not there yet. */
  readonly answers: readonly (PlanAnswer | null)[];
  readonly problem: Problem | null;
}

export async function keptAnswers(
  { context }: House,
  { snapshot }: Visit,
  asked: WhatIfAsked,
): Promise<Answers> {
  const kept = questionsOf(asked).map((question) => keptPlan(context, question, snapshot));
  return { answers: await Promise.all(kept), problem: null };
}

/** One after the other, up to the first that cannot be. */
export async function allAnswers(house: House, here: Visit, asked: WhatIfAsked): Promise<Answers> {
  const found: (PlanAnswer | null)[] = [];
  for (const question of questionsOf(asked)) {
    const plan = await planOf(house, here, beside(question, found[0] ?? null));
    if (!plan.ok) {
      const { answers } = await keptAnswers(house, here, asked);
      return { answers, problem: plan.problem };
    }
    found.push(plan.value);
  }
  return { answers: found, problem: null };
}

export const planOf = ({ context, answering }: House, { snapshot }: Visit, question: PlanQuestion) =>
  askPlan(context, question, { snapshot, answering });

interface Told extends Answers {
  readonly asked: WhatIfAsked;
  /** Nothing is begun by itself. */
  readonly rests: boolean;
}

export function shownOf(house: House, here: Visit, { asked, answers, problem, rests }: Told): WhatIfShown {
  const { names, unit, snapshot } = here;
  const market = marketIn(here.snapshot);
  const [base = null, ...besides] = answers;
  const said = { names, unit, market, kinds: snapshot.facts.kinds };
  const isWhole = answers.every((answer) => answer !== null) || asked.ifs.length === 0;
  const stopped = rests && !isWhole ? 'Not all of these plans are made.' : null;
  const sentence = problem?.sentence ?? stopped;
  return {
    ...{ names, unit, market, today: snapshot.today, asked, base },
    besides: asked.ifs.map((together, i) => ({
      words: togetherWords(together, said),
      plan: besides[i] ?? null,
    })),
    working: isWhole || sentence !== null ? null : workingOf(house, here, { asked, answers }),
    amiss: sentence === null ? null : { sentence, again: whatIfAt(asked) },
  };
}

export function workingOf(
  { underWay }: House,
  here: Visit,
  { asked, answers }: Pick<Told, 'asked' | 'answers'>,
): Working {
  const next = questionsOf(asked)[answers.indexOf(null)];
  const query = whatIfQuery(asked);
  return {
    progressAt: `${paths.whatIfAnswers}?${query}&seen=${seenIn(answers)}`,
    waitAt: `${whatIfAt(asked)}&wait=1`,
    cancel: { entry: entryOf(here.forms, 'what-if-cancel'), action: paths.whatIfCancel, asked: query },
    progress: next === undefined ? null : underWay.progressOf(planName(next)),
    currency: marketIn(here.snapshot).purse.currency,
  };
}

export const seenIn = (answers: Answers['answers']): number =>
  answers.filter((answer) => answer !== null).length;
