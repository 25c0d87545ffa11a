/** Sunday: will the feeders last until the next delivery, what runs out when, and what helps. */

import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { CoverAnswer, WeekAhead } from '../../src/husbandry/supply/index.ts';
import { SizeSpectrum } from '../charts/size-spectrum.tsx';
import { SpectrumAhead, WeekSlider } from '../charts/week-slider.tsx';
import { counted, type LengthUnit, longDay, percent, shortDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { Names } from '../names.ts';
import { FirstSteps } from '../partials/hints.tsx';
import { VerdictMark } from '../partials/icons.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { chanceInFull, SHOWN_FROM, shortfallWords } from '../partials/verdict.tsx';
import { paths } from '../paths.ts';
import { ActHere } from './sunday-act.tsx';
import { GroupsTable } from './sunday-groups.tsx';
import { Leftovers } from './sunday-leftovers.tsx';
import { ActsPlanned, type PlannedWeek } from './sunday-plan.tsx';

export interface SundayProps {
  readonly shell: Shell;
  readonly answer: CoverAnswer;
  readonly names: Names;
  readonly unit: LengthUnit;
  /** The delivery that ends the check: what comes, and on which day; null when none is expected. */
  readonly delivery: { readonly label: string; readonly day: DayNumber } | null;
  /** What the plan asks for this week, in place of an act looked for; null where there is no plan of the room as it is. */
  readonly plan: PlannedWeek | null;
  /** Whether the act that helps most has been looked for; otherwise the page asks for it once it is shown. */
  readonly actSought: boolean;
  /** A coming week in place of today's picture. */
  readonly ahead: { readonly shown: WeekAhead; readonly weeks: readonly WeekAhead[] } | null;
  /** Weeks the picture can be moved ahead. */
  readonly lastWeek: number;
  /** The defaults that weigh most on this answer. */
  readonly sources: readonly SourceLine[];
}

export const SundayPage = (props: SundayProps) => {
  const { shell, answer } = props;
  const prey = answer.bins.length > 0;
  return (
    <Layout shell={shell} title={answer.headline} here="sunday">
      <div class="sunday">
        <Verdict {...props} />
        <div class="sunday-acts">
          <ToDo {...props} />
          {answer.look === null ? null : (
            <p class="look">
              <strong>Look first.</strong> {answer.look.sentence}{' '}
              <a href={paths.bin(answer.look.bin)}>Say what you see</a>
            </p>
          )}
        </div>
        {answer.verdict === 'empty' && !prey ? null : <Picture {...props} />}
      </div>
      <Dangers answer={answer} />
      {answer.groups.length === 0 ? null : <GroupsTable {...props} />}
      <Leftovers bins={answer.bins} days={answer.horizonDays} />
      {answer.verdict === 'empty' ? null : <HowSure {...props} />}
    </Layout>
  );
};

/** The plan's steps of this week; without a plan the first steps or the act that helps most. */
const ToDo = ({ answer, plan, shell, actSought }: SundayProps) => {
  const prey = answer.bins.length > 0;
  if (plan !== null && answer.verdict !== 'empty') return <ActsPlanned {...plan} />;
  if (answer.verdict === 'empty' || !prey)
    return <FirstSteps animals={answer.verdict !== 'empty'} prey={prey} formId={shell.formId} />;
  return <ActHere act={answer.act} sought={actSought} settled={answer.verdict === 'lasts'} />;
};

const Verdict = ({ answer, delivery }: SundayProps) => (
  <header class="verdict">
    <p class="eyebrow">
      {delivery === null
        ? `The next ${counted(answer.horizonDays, 'day')}`
        : `Until ${delivery.label} on ${shortDay(delivery.day)}`}
    </p>
    <h1>
      <VerdictMark verdict={answer.verdict} /> {answer.headline}
    </h1>
    {answer.verdict === 'empty' ? null : <Lede answer={answer} />}
  </header>
);

const Lede = ({ answer }: Pick<SundayProps, 'answer'>) => (
  <p class="lede">
    Nobody misses a meal in {chanceInFull(answer.nothingMissed)}. {dueWords(Math.round(answer.mealsDue))}:{' '}
    {shortfallWords(answer)}.
  </p>
);

/** What danger means, and who waits though prey is there. */
const Dangers = ({ answer: { dangers, unfed } }: Pick<SundayProps, 'answer'>) => (
  <>
    {dangers < SHOWN_FROM ? null : (
      <p class="note">In danger: longer without food than its kind can safely go, for want of prey.</p>
    )}
    {unfed.dangers < SHOWN_FROM ? null : (
      <p class="look">
        Prey is there for them, but nobody feeds in time. <a href={paths.lateAnimals}>Who is late now</a>, or{' '}
        <a href={paths.settings}>feed on more days</a>.
      </p>
    )}
  </>
);

const dueWords = (meals: number): string =>
  meals === 0 ? 'No meal falls on a feeding day of yours' : `${counted(meals, 'meal')} due`;

/** Today's picture, or that of a coming week, with the slider that leads from one to the other. */
const Picture = ({ answer, ahead, lastWeek, names, unit }: SundayProps) => (
  <div class="picture">
    <WeekSlider week={ahead?.shown.week ?? 0} last={lastWeek} />
    <div id="ahead">
      {ahead === null ? (
        <SizeSpectrum spectrum={answer.spectrum} groups={answer.groups} species={names.species} unit={unit} />
      ) : (
        <SpectrumAhead {...ahead} species={names.species} unit={unit} />
      )}
    </div>
    <p class="note">Weeks ahead are played on as if nothing more were ordered than what is on its way.</p>
  </div>
);

const HowSure = ({ answer, sources }: SundayProps) => (
  <section aria-labelledby="how-sure">
    <h2 id="how-sure">Where the numbers come from</h2>
    <p>
      {answer.replicates.toLocaleString('en-GB')} weeks like this one were played through, day by day, from{' '}
      {longDay(answer.day)}. Skipped evenings, generous helpings, late parcels and slow or fast growth differ
      from one to the next; {percent(answer.nothingMissed.chance)} is the share in which nobody missed a meal.
      The same records give the same answer: change {answer.revision}, random start {answer.seed}.
    </p>
    <Sources sources={sources} />
  </section>
);
