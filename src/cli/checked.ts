/** The Sunday question as the Sunday page answers it: with the steps of the plan, or with the act that helps most. */
import { namesOf } from '../../views/names.ts';
import { reasonWords } from '../../views/pages/plan-reasons.ts';
import { dueTitle } from '../../views/pages/plan-steps.ts';
import { type Context, keptPlan, loadSnapshot, usualPlanQuestion } from '../actions/index.ts';
import { type CivilDate, civilDate } from '../husbandry/calendar.ts';
import { noMarket } from '../husbandry/orders/index.ts';
import { headsOf, type PlanLine, type PlanStep, sundaySteps } from '../husbandry/plan/index.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { type CoverAnswer, sundayCheck } from '../husbandry/supply/index.ts';

/** What is asked; what is left out is as the Sunday page has it. */
export interface CheckAsked {
  readonly day: number | undefined;
  readonly days: number | undefined;
  readonly seed: number | undefined;
}

export interface Checked {
  readonly cover: CoverAnswer;
  /** The plan's steps before the next Sunday; none where no plan answers, and then an act was looked for. */
  readonly steps: readonly StepTold[];
}

export interface StepTold {
  readonly what: PlanLine['what'];
  readonly sentence: string;
  /** In sentences; '' where the step was not explained. */
  readonly why: string;
  /** Last day to do it. */
  readonly by: CivilDate;
  readonly bin: string | null;
  readonly species: string;
  readonly heads: number;
  readonly cents: number;
  readonly minutes: number;
}

export async function checked(context: Context, { day, days, seed }: CheckAsked): Promise<Checked> {
  const snapshot = await loadSnapshot(context, day);
  const seeded = seed === undefined ? snapshot : { ...snapshot, seed };
  const options = days === undefined ? {} : { days };
  const isUsual = seed === undefined && days === undefined && snapshot.today === context.clock().today;
  const planned = isUsual ? await plannedIn(context, snapshot) : null;
  return planned ?? { cover: sundayCheck(seeded, options), steps: [] };
}

/** Null where no plan of the room as it is was made, or none of its steps is an answer. */
async function plannedIn(context: Context, snapshot: Snapshot): Promise<Checked | null> {
  const plan = await keptPlan(context, await usualPlanQuestion(context), snapshot);
  if (plan === null) return null;
  const cover = sundayCheck(snapshot, { seeksAct: false });
  const steps = sundaySteps(plan, cover);
  return steps.length === 0 ? null : { cover, steps: steps.map((step) => stepTold(step, snapshot)) };
}

function stepTold(step: PlanStep, snapshot: Snapshot): StepTold {
  const { line, lines } = step;
  const { today, market = noMarket } = snapshot;
  const said = { names: namesOf(snapshot), unit: 'mm', market, today } as const;
  return {
    what: line.what,
    sentence: `${dueTitle(step, said)}.`,
    why: reasonWords(step, said).join(' '),
    by: civilDate(line.actBy),
    bin: line.what === 'start' ? null : line.bin,
    species: line.species,
    heads: headsOf(step),
    cents: lines.reduce((sum, { cents }) => sum + cents, 0),
    minutes: lines.reduce((sum, { minutes }) => sum + minutes, 0),
  };
}
