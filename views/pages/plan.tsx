/** The plan: what to order, harvest, cull and start in the coming weeks, why, and what it comes to. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { PlanAnswer, PlanLine } from '../../src/husbandry/plan/index.ts';
import { PlanCalendar } from '../charts/plan-calendar.tsx';
import { PlanCover } from '../charts/plan-cover.tsx';
import { counted, listed, longDay, money } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import type { PlanAsked } from '../plan-address.ts';
import { ApplyWeek } from './plan-apply.tsx';
import { PlanAsking, WishList } from './plan-asking.tsx';
import { planHeadline, planLede } from './plan-headline.ts';
import { PlanLines } from './plan-lines.tsx';
import { PlanWhole, timeWords } from './plan-whole.tsx';
import type { PlanSaid } from './plan-words.ts';
import { type Working, WorkingPart } from './plan-working.tsx';

/** A plan as the page tells it. */
export interface PlanTold extends PlanSaid {
  readonly asked: PlanAsked;
  readonly forms: PageForms;
  /** The field of a bin's form that says this line's size, with the trade size that comes nearest; none where there is none. */
  readonly sizeField: (
    name: string,
    line: Pick<PlanLine, 'species'> & { readonly fromMm: number | null; readonly toMm: number | null },
  ) => Readonly<Record<string, string>>;
}

export interface PlanShown {
  /** The plan asked for, or the last good one; null before the first. */
  readonly told: PlanTold | null;
  /** How old the plan is that is shown in place of the one asked for; null where it is that one. */
  readonly age: {
    readonly madeOn: DayNumber;
    readonly changes: number;
    /** Suppliers it orders from today, whose last hour of ordering has passed since. */
    readonly tooLate: readonly string[];
    readonly withoutWishes: boolean;
  } | null;
  /** The one asked for is being made. */
  readonly working: Working | null;
  /** Why the one asked for is not there. */
  readonly amiss: string | null;
  /** Address that makes the plan asked for; null where it is made or being made. */
  readonly makeAt: string | null;
}

export interface PlanProps {
  readonly shell: Shell;
  readonly asked: PlanAsked;
  /** What is wrong with the address, by field. */
  readonly problems: Readonly<Record<string, string>>;
  /** Wishes in words; unmet where the plan that was asked for is there and could not do it. */
  readonly wishes: readonly { readonly key: string; readonly words: string; readonly unmet: boolean }[];
  readonly shown: PlanShown;
}

export const PlanPage = (props: PlanProps) => (
  <Layout shell={props.shell} title="Plan" here="more">
    <PlanPart shown={props.shown} weeks={props.asked.weeks} />
    <WishList {...props} />
    <PlanAsking {...props} />
  </Layout>
);

/** What is swapped when the plan is there. */
export const PlanPart = ({ shown, weeks }: { shown: PlanShown; weeks: number }) => (
  <section id="plan" class="plan">
    {shown.amiss === null ? null : (
      <p class="problem" role="alert">
        {shown.amiss}
      </p>
    )}
    {shown.told === null ? <NoPlan shown={shown} /> : <Told {...shown.told} shown={shown} weeks={weeks} />}
  </section>
);

const MAKING = 'The plan is being made';

const NoPlan = ({ shown: { working, makeAt } }: { shown: PlanShown }) => (
  <>
    <header class="page-head">
      <h1>What to order, harvest and start in the coming weeks</h1>
      <p class="lede">
        The plan weighs what your animals will eat against what grows in your bins and what your suppliers
        send, and says of every step why it is there.
      </p>
    </header>
    {working === null ? null : <WorkingPart working={working} title={MAKING} />}
    {makeAt === null ? null : <Make at={makeAt} words="Make the plan" />}
  </>
);

const Make = ({ at, words }: { at: string; words: string }) => (
  <p class="acts">
    <a class="button act-here" href={at}>
      {words}
    </a>
  </p>
);

const Told = (props: PlanTold & { shown: PlanShown; weeks: number }) => {
  const { plan, shown } = props;
  const { working, makeAt } = shown;
  return (
    <>
      <header class="page-head">
        <p class="eyebrow">
          Plan · {counted(plan.periods.length, 'week')} from {longDay(plan.day)}
        </p>
        <h1>{planHeadline(props)}</h1>
        <p class="lede">{planLede(props)}</p>
        <p class="lede">{costWords(props)}</p>
      </header>
      <Age shown={shown} />
      {working === null ? null : <WorkingPart working={working} title={MAKING} />}
      {makeAt === null ? null : <Make at={makeAt} words="Make it anew" />}
      <Obstacles plan={plan} />
      <ApplyWeek {...props} isFresh={shown.age === null} />
      <PlanCalendar {...props} />
      <PlanLines {...props} />
      <PlanCover plan={plan} />
      <PlanWhole {...props} />
    </>
  );
};

/** 'It costs about €84.20 over 12 weeks: €55.00 for prey, €17.00 postage, €12.20 for 3 hours of your time.' */
function costWords({ plan, market }: PlanTold): string {
  const { cents, minutes } = plan.whole;
  const sum = (part: number) => money(part, market.purse.currency);
  const parts = [
    ...(cents.goods > 0 ? [`${sum(cents.goods)} for prey`] : []),
    ...(cents.postage > 0 ? [`${sum(cents.postage)} for postage`] : []),
    ...(cents.keeping > 0 ? [`${sum(cents.keeping)} to keep it`] : []),
    ...(cents.labour > 0 ? [`${sum(cents.labour)} for ${timeWords(minutes)} of your time`] : []),
  ];
  const all = `It costs about ${sum(cents.total)} over ${counted(plan.periods.length, 'week')}`;
  return parts.length === 0 ? `${all}.` : `${all}: ${listed(parts)}.`;
}

/** Said of a plan that is not the one asked for. */
const Age = ({ shown: { age } }: { shown: PlanShown }) => {
  if (age === null) return null;
  const { madeOn, changes, tooLate, withoutWishes } = age;
  const before = changes === 0 ? '' : `, before your last ${changes === 1 ? 'change' : `${changes} changes`}`;
  return (
    <p class="plan-age">
      This is the plan made on {longDay(madeOn)}
      {before}
      {withoutWishes ? ', without your wishes' : ''}.
      {tooLate.length === 0 ? '' : ` Today’s last hour to order from ${listed(tooLate)} has passed.`}
    </p>
  );
};

const Obstacles = ({ plan: { obstacles } }: { plan: PlanAnswer }) =>
  obstacles.length === 0 ? null : (
    <section class="plan-obstacles" aria-labelledby="plan-obstacles">
      <h2 id="plan-obstacles">What stands in the way</h2>
      <ul>
        {obstacles.map(({ sentence, kind }) => (
          <li>
            {sentence} {kind === 'no offer' ? <a href={paths.suppliers}>Who sells you prey?</a> : null}
          </li>
        ))}
      </ul>
    </section>
  );
