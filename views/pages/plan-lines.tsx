/** The plan's lines week by week: what to do, why, and whether the keeper takes it, insists on it or will not have it. */
import {
  cullKey,
  isTakenOut,
  type PlanLine,
  type PlanStep,
  restKey,
  stepsOf,
  type Wish,
} from '../../src/husbandry/plan/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, dayRange, money, sentenceCase, shortDay } from '../format.ts';
import { paths } from '../paths.ts';
import { planAt, planQuery, whatIfAt, wishing, withoutWish } from '../plan-address.ts';
import type { PlanTold } from './plan.tsx';
import { ACCEPT, acceptAt } from './plan-accept.ts';
import { reasonWords } from './plan-reasons.ts';
import { dueTitle, sizeWords } from './plan-steps.ts';
import { amountOf, amountUnit, lineCourse, lineTitle } from './plan-words.ts';

export const PlanLines = (told: PlanTold) => {
  const { plan, today } = told;
  const steps = stepsOf(plan.lines);
  if (steps.length === 0) return null;
  const isSoon = ({ line }: PlanStep) => weekOf(line.actBy, today) < SOON_WEEKS;
  const later = steps.filter((step) => !isSoon(step));
  return (
    <section aria-labelledby="plan-lines">
      <h2 id="plan-lines">What to do, and why</h2>
      <Weeks steps={steps.filter(isSoon)} told={told} />
      {later.length === 0 ? null : (
        <details class="plan-later">
          <summary>
            {sentenceCase(counted(later.length, 'later step'))}, from {shortDay(later[0]!.line.actBy)} on:
            each is planned anew before it comes
          </summary>
          <Weeks steps={later} told={told} />
        </details>
      )}
    </section>
  );
};

/** Weeks whose steps stand open; those after them will be planned anew before they come. */
const SOON_WEEKS = 4;

const Weeks = ({ steps, told }: { steps: readonly PlanStep[]; told: PlanTold }) => {
  const weekOfStep = ({ line }: PlanStep) => weekOf(line.actBy, told.today);
  return (
    <>
      {[...new Set(steps.map(weekOfStep))].map((week) => (
        <section class="plan-week">
          <h3>{weekName(week, told.today)}</h3>
          <ul class="plan-lines">
            {steps
              .filter((step) => weekOfStep(step) === week)
              .map((step) => (
                <Step step={step} told={told} />
              ))}
          </ul>
        </section>
      ))}
    </>
  );
};

/** Weeks from today; what was due before stands in the first. */
const weekOf = (day: number, today: number): number => Math.max(0, Math.floor((day - today) / DAYS_PER_WEEK));

function weekName(week: number, today: number): string {
  const from = today + week * DAYS_PER_WEEK;
  const days = dayRange(from, from + DAYS_PER_WEEK - 1);
  return week === 0 ? `The next seven days, ${days}` : days;
}

interface StepProps {
  readonly step: PlanStep;
  readonly told: PlanTold;
}

const Step = ({ step, told }: StepProps) => {
  const { line, lines } = step;
  const cents = lines.reduce((sum, each) => sum + each.cents, 0);
  return (
    <li class={`plan-line is-${line.what}`}>
      <h4>{dueTitle(step, told)}</h4>
      <p class="plan-course">
        {lineCourse(line)} {cents === 0 ? '' : `${money(cents, told.market.purse.currency)}.`}
        {line.pinned ? <strong class="plan-pinned"> You insist on it.</strong> : null}
      </p>
      <p class="plan-reason">{reasonWords(step, told).join(' ')}</p>
      <div class="plan-choices">
        {(weekOf(line.actBy, told.today) < SOON_WEEKS ? lines : []).map((each) => (
          <a class="button small" href={acceptAt(each, told)}>
            {lines.length > 1 && isTakenOut(each) ? sizeWords(each, told) : ACCEPT[each.what]}
            <Unseen line={each} told={told} />
          </a>
        ))}
        <Wishes line={line} told={told} />
      </div>
    </li>
  );
};

interface LineProps {
  readonly line: PlanLine;
  readonly told: PlanTold;
}

/** Says which line a link is about, for who does not see it stand there. */
const Unseen = ({ line, told }: LineProps) => <span class="unseen">: {lineTitle(line, told)}</span>;

/** Pinned as it is or in another amount, forbidden, or the wish taken back: each is another address of the page. */
const Wishes = ({ line, told }: LineProps) => {
  const { asked } = told;
  const key = wishKey(line);
  if (asked.wishes.some((wish) => wish.key === key))
    return (
      <Choice
        href={planAt(withoutWish(asked, key))}
        words="Leave it to the plan"
        follow
        about={{ line, told }}
      />
    );
  const to = (next: Wish) => planAt(wishing(asked, next));
  const forbid = (
    <Choice href={to({ key, wish: 'forbid', amount: null })} words="Forbid it" about={{ line, told }} />
  );
  if (line.what === 'cull') return forbid;
  if (line.what === 'harvest') {
    const weeks = told.plan.periods.filter(({ from }) => from <= line.day).length;
    return (
      <Choice
        href={to({ key, wish: 'pin', amount: weeks })}
        words={`Leave it alone until ${shortDay(line.actBy + 1)}`}
        about={{ line, told }}
      />
    );
  }
  const instead = { weeks: asked.weeks, ifs: [[{ what: 'without' as const, key }]] };
  return (
    <>
      <Choice href={to({ key, wish: 'pin', amount: amountOf(line) })} words="Pin it" about={{ line, told }} />
      {forbid}
      <Choice href={whatIfAt(instead)} words="What instead?" about={{ line, told }} />
      <OtherAmount line={line} told={told} />
    </>
  );
};

/** What wishes about a line speak of: a harvest is not had by leaving its bin alone, a cull by all of its cause. */
function wishKey(line: PlanLine): string {
  if (line.what === 'harvest') return restKey(line.bin);
  return line.what === 'cull' ? cullKey(line) : line.key;
}

interface ChoiceProps {
  readonly href: string;
  readonly words: string;
  readonly about: LineProps;
  /** The plan it leads to has been made before. */
  readonly follow?: boolean;
}

const Choice = ({ href, words, about, follow = false }: ChoiceProps) => (
  <a class="button small quiet" href={href} {...(follow ? {} : { rel: 'nofollow' })}>
    {words}
    <Unseen {...about} />
  </a>
);

const OtherAmount = ({ line, told }: LineProps) => (
  <details class="other-amount">
    <summary>
      Another amount
      <Unseen line={line} told={told} />
    </summary>
    <form method="get" action={paths.plan} class="inline">
      {[...new URLSearchParams(planQuery(told.asked))].map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
      <input type="hidden" name="line" value={line.key} />
      <label for={`amount-${line.key}`}>{amountUnit(line)}</label>
      <input
        id={`amount-${line.key}`}
        type="number"
        name="amount"
        min="1"
        inputmode="numeric"
        value={`${amountOf(line)}`}
        required
      />
      <button type="submit" class="small">
        Pin this amount
      </button>
    </form>
  </details>
);
