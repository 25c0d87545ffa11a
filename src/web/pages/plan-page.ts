/** The plan's page: the plan asked for where it is kept or waited for, else the last good one while the page asks how far it is. */
import { setTimeout as pause } from 'node:timers/promises';
import type { Context, Hono } from 'hono';
import { PlanPage, PlanPart, type PlanShown } from '../../../views/pages/plan.tsx';
import { ProgressPart } from '../../../views/pages/plan-working.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { type PlanAsked, planAt } from '../../../views/plan-address.ts';
import { askPlan, keptPlan, planName } from '../../actions/index.ts';
import type { PlanAnswer, PlanQuestion } from '../../husbandry/plan/index.ts';
import type { Result } from '../../husbandry/result.ts';
import { settings } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { applyPlan } from './plan-apply.ts';
import { type AskedPlan, planAskedIn } from './plan-asked.ts';
import { lineNames, shownFresh, shownLast, wishLines, workingOf } from './plan-told.ts';
import { posted, valuesIn } from './posted.ts';
import { anyText } from './typed.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function planPageRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.plan, (c) => showPlan(house, c));
  app.get(paths.planProgress, (c) => showProgress(house, c));
  app.post(paths.planCancel, (c) => cancelPlan(house, c));
  app.post(paths.planApply, applying(house));
}

async function askedIn({ context }: House, here: Visit, query: URLSearchParams): Promise<AskedPlan> {
  const { planWeeks } = await context.store.ask(settings);
  return planAskedIn(query, planWeeks, lineNames(here));
}

export const queryIn = (c: Context): URLSearchParams => new URL(c.req.url).searchParams;

/** The question of the page stands in the form. */
function applying(house: House) {
  const askedOf = (here: Visit, asked: string) => askedIn(house, here, new URLSearchParams(asked));
  return posted(house, {
    form: () => 'plan-apply',
    shape: () => ({ asked: anyText, orders: anyText }),
    act: async ({ asked, orders }, { c, formId }) => {
      const here = await visit(house, c);
      const { question } = await askedOf(here, asked);
      return applyPlan(house, here, { question, seen: orders, formId });
    },
    next: () => paths.orders,
    again: (c, refused) => showPlan(house, c, refused),
  });
}

async function showPlan(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const query = refused === null ? queryIn(c) : new URLSearchParams(refused.values.asked);
  const { asked, question, problems, moved } = await askedIn(house, here, query);
  if (moved && question !== null) return c.redirect(planAt(asked), 303);
  const shown =
    question === null
      ? await shownLast(house, here, { asked, amiss: problems.wishes ?? null })
      : await shownFor(house, here, { question, refused, wait: query.has('wait'), rest: query.has('rest') });
  const wishes = wishLines(asked.wishes, here, shown);
  return page(
    c,
    PlanPage({ shell: here.shell, asked, problems, wishes, shown }),
    statusOf(question === null || refused !== null),
  );
}

interface Wanted {
  readonly question: PlanQuestion;
  /** Said where the keeper waits for it, or has stopped it. */
  readonly wait: boolean;
  readonly rest: boolean;
  /** The form that was refused: said above where it is not shown any more. */
  readonly refused: Refused | null;
}

async function shownFor(house: House, here: Visit, wanted: Wanted): Promise<PlanShown> {
  const { question, wait, rest, refused } = wanted;
  const kept = await keptPlan(house.context, question, here.snapshot);
  if (kept !== null) return shownFresh(kept, question, here);
  if (wait) return shownAs(house, here, { asked: question, plan: await planOf(house, here, question) });
  if (rest) return shownLast(house, here, { asked: question, makeAt: planAt(question) });
  const amiss = refused?.problems[''] ?? null;
  return shownLast(house, here, { asked: question, working: workingOf(house, here, question), amiss });
}

const planOf = ({ context, answering }: House, { snapshot }: Visit, question: PlanQuestion) =>
  askPlan(context, question, { snapshot, answering });

interface Come {
  readonly asked: PlanAsked;
  readonly plan: Result<PlanAnswer>;
}

const shownAs = async (house: House, here: Visit, { asked, plan }: Come): Promise<PlanShown> =>
  plan.ok
    ? shownFresh(plan.value, asked, here)
    : shownLast(house, here, { asked, amiss: plan.problem.sentence, makeAt: planAt(asked) });

/** So long an address waits for news before it says how far it is. */
export const NEWS_AFTER_MS = 1000;

/** How far the plan is; once it is there, or cannot be, the whole part of the page. */
async function showProgress(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { asked, question, problems } = await askedIn(house, here, queryIn(c));
  if (question === null)
    return partOf(
      c,
      await shownLast(house, here, { asked, amiss: Object.values(problems)[0] ?? null }),
      asked,
    );
  const plan = await Promise.race([planOf(house, here, question), pause(NEWS_AFTER_MS, null)]);
  if (plan === null) return page(c, String(ProgressPart({ working: workingOf(house, here, question) })));
  return partOf(c, await shownAs(house, here, { asked: question, plan }), asked);
}

function partOf(c: Context, shown: PlanShown, { weeks }: PlanAsked): Response | Promise<Response> {
  c.header('HX-Retarget', '#plan');
  return page(c, String(PlanPart({ shown, weeks })));
}

async function cancelPlan(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { asked: typed = '' } = await valuesIn(c);
  const { asked, question } = await askedIn(house, here, new URLSearchParams(typed));
  if (question !== null) house.underWay.cancel(planName(question));
  return c.redirect(planAt(asked, { rest: '1' }), 303);
}
