/** A plan as its page tells it: the one asked for, or the last good one with its age. */
import type { PlanShown, PlanTold } from '../../../views/pages/plan.tsx';
import { keyWords, wishSentence } from '../../../views/pages/plan-wishes.ts';
import { amountOf } from '../../../views/pages/plan-words.ts';
import type { Working } from '../../../views/pages/plan-working.tsx';
import { entryOf } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { type PlanAsked, planAt, planQuery } from '../../../views/plan-address.ts';
import { lastPlan, planName } from '../../actions/index.ts';
import type { PlanAnswer, PlanQuestion, Wish } from '../../husbandry/plan/index.ts';
import { sizeOptionAt } from './choices.ts';
import type { House } from './house.ts';
import { marketIn } from './supplier-views.ts';
import type { Visit } from './visit.ts';

function toldOf(plan: PlanAnswer, asked: PlanAsked, here: Visit): PlanTold {
  const { snapshot, names, unit, forms } = here;
  const { species } = snapshot.facts;
  return {
    plan,
    today: snapshot.today,
    names,
    unit,
    market: marketIn(here.snapshot),
    asked,
    forms,
    sizeField: (name, { species: code, fromMm, toMm }) => {
      const prey = species.get(code);
      if (prey === undefined || fromMm === null || toMm === null) return {};
      const size = sizeOptionAt(prey, (fromMm + toMm) / 2);
      return size === undefined ? {} : { [name]: size };
    },
  };
}

/** The plan asked for. */
export const shownFresh = (plan: PlanAnswer, asked: PlanAsked, here: Visit): PlanShown => ({
  told: toldOf(plan, asked, here),
  age: null,
  working: null,
  amiss: null,
  makeAt: null,
});

interface Instead extends Partial<Pick<PlanShown, 'working' | 'amiss' | 'makeAt'>> {
  readonly asked: PlanAsked;
}

/** The last good plan in its place, if there is one. */
export async function shownLast(
  { context }: House,
  here: Visit,
  { asked, ...more }: Instead,
): Promise<PlanShown> {
  const last = await lastPlan(context, { ...asked, supposed: [] });
  const rest = { working: null, amiss: null, makeAt: null, ...more };
  if (last === null) return { told: null, age: null, ...rest };
  const { revision } = here.snapshot;
  const withoutWishes = asked.wishes.length > 0 && !hasWishes(last, asked);
  return {
    told: toldOf(last, asked, here),
    age: {
      madeOn: last.day,
      changes: Math.max(0, revision - last.revision),
      tooLate: tooLateIn(last, here),
      withoutWishes,
    },
    ...rest,
  };
}

/** Names of suppliers a plan orders from today though their last hour of ordering has passed. */
const tooLateIn = ({ lines }: PlanAnswer, { snapshot }: Visit): string[] =>
  marketIn(snapshot)
    .suppliers.filter(({ code, tooLateOn }) =>
      lines.some((line) => line.what === 'order' && line.supplier === code && line.actBy === tooLateOn),
    )
    .map(({ name }) => name);

/** Whether a plan was made with these wishes: its lines say which are pinned, and what is forbidden is not in it. */
const hasWishes = ({ lines }: PlanAnswer, { wishes }: Pick<PlanAsked, 'wishes'>): boolean =>
  wishes.every(({ key, wish, amount }) => {
    const line = lines.find((each) => each.key === key);
    if (wish === 'forbid') return line === undefined;
    return line?.pinned === true && (amount === null || amountOf(line) === amount);
  });

/** The plan asked for is being made: how far it is, and how it is stopped. */
export function workingOf({ underWay }: House, here: Visit, question: PlanQuestion): Working {
  const query = planQuery(question);
  return {
    progressAt: `${paths.planProgress}?${query}`,
    waitAt: planAt(question, { wait: '1' }),
    cancel: { entry: entryOf(here.forms, 'plan-cancel'), action: paths.planCancel, asked: query },
    progress: underWay.progressOf(planName(question)),
    currency: marketIn(here.snapshot).purse.currency,
  };
}

/** What lines are called, by key. */
export function lineNames(here: Visit) {
  const said = saidIn(here);
  return (key: string): string => keyWords(key, said);
}

const saidIn = ({ names, unit, snapshot }: Visit) => ({ names, unit, market: marketIn(snapshot) });

/** Wishes in words, and which of them the plan that was asked for does not keep. */
export function wishLines(wishes: readonly Wish[], here: Visit, { told, age }: PlanShown) {
  const said = saidIn(here);
  const isKept = (wish: Wish): boolean =>
    told === null || age !== null || hasWishes(told.plan, { wishes: [wish] });
  return wishes.map((wish) => ({
    key: wish.key,
    words: wishSentence(wish, said),
    unmet: !isKept(wish),
  }));
}
