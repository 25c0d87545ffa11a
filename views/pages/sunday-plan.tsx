/** What the plan asks for before the next Sunday: the most urgent step with its reason and where it is done, then the rest. */
import type { PlanStep } from '../../src/husbandry/plan/index.ts';
import { counted } from '../format.ts';
import { paths } from '../paths.ts';
import type { PlanTold } from './plan.tsx';
import { ACCEPT, acceptAt } from './plan-accept.ts';
import { reasonWords } from './plan-reasons.ts';
import { dueTitle } from './plan-steps.ts';

/** Steps of the plan of the room as it is; at least one, the most urgent first. */
export interface PlannedWeek {
  readonly told: PlanTold;
  readonly steps: readonly PlanStep[];
}

export const ActsPlanned = ({ told, steps }: PlannedWeek) => {
  const [first, ...rest] = steps;
  if (first === undefined) return null;
  return (
    <section class="act" aria-labelledby="act">
      <h2 id="act">Do this</h2>
      <p>{dueTitle(first, told)}.</p>
      <Reason step={first} told={told} />
      <a class="button act-here" href={acceptAt(first.line, told)}>
        {ACCEPT[first.line.what]}
      </a>
      <Rest steps={rest} told={told} />
      <p class="note">
        <a href={paths.plan}>The whole plan</a>: what comes after this week, and why.
      </p>
    </section>
  );
};

interface StepProps {
  readonly step: PlanStep;
  readonly told: PlanTold;
}

const Reason = ({ step, told }: StepProps) => {
  const words = reasonWords(step, told).join(' ');
  return words === '' ? null : <small class="act-reason">{words}</small>;
};

/** The picture of the week stands below: what is less urgent is opened by who wants it. */
const Rest = ({ steps, told }: PlannedWeek) =>
  steps.length === 0 ? null : (
    <details>
      <summary>Then {counted(steps.length, 'more step')} before Sunday</summary>
      <ul class="act-rest">
        {steps.map((step) => (
          <li>
            <a href={acceptAt(step.line, told)}>{dueTitle(step, told)}</a>
            <Reason step={step} told={told} />
          </li>
        ))}
      </ul>
    </details>
  );
