/** Sunday: will the feeders last until the next delivery, what runs out when, and what helps. */

import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { Act, CoverAnswer } from '../../src/husbandry/supply/index.ts';
import { SizeSpectrum } from '../charts/size-spectrum.tsx';
import { counted, expected, type LengthUnit, longDay, percent, shortDay, weeksIn } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { Names } from '../names.ts';
import { FirstSteps } from '../partials/hints.tsx';
import { VerdictMark } from '../partials/icons.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { chanceInFull, shortfallWords } from '../partials/verdict.tsx';
import { paths } from '../paths.ts';
import { GroupsTable } from './sunday-groups.tsx';
import { Leftovers } from './sunday-leftovers.tsx';

export interface SundayProps {
  readonly shell: Shell;
  readonly answer: CoverAnswer;
  readonly names: Names;
  readonly unit: LengthUnit;
  /** The delivery that ends the check: what comes, and on which day; null when none is expected. */
  readonly delivery: { readonly label: string; readonly day: DayNumber } | null;
  /** The defaults that weigh most on this answer. */
  readonly sources: readonly SourceLine[];
}

export const SundayPage = (props: SundayProps) => {
  const { shell, answer, names, unit } = props;
  const prey = answer.bins.length > 0;
  return (
    <Layout shell={shell} title={answer.headline} here="sunday">
      <div class="sunday">
        <Verdict {...props} />
        <div class="sunday-acts">
          {answer.verdict === 'empty' || !prey ? (
            <FirstSteps animals={answer.verdict !== 'empty'} prey={prey} formId={shell.formId} />
          ) : (
            <ActHere act={answer.act} />
          )}
          {answer.look === null ? null : (
            <p class="look">
              <strong>Look first.</strong> {answer.look.sentence}{' '}
              <a href={paths.bin(answer.look.bin)}>Say what you see</a>
            </p>
          )}
        </div>
        {answer.verdict === 'empty' && !prey ? null : (
          <SizeSpectrum
            spectrum={answer.spectrum}
            groups={answer.groups}
            species={names.species}
            unit={unit}
          />
        )}
      </div>
      {answer.groups.length === 0 ? null : <GroupsTable {...props} />}
      <Leftovers bins={answer.bins} days={answer.horizonDays} />
      {answer.verdict === 'empty' ? null : <HowSure {...props} />}
    </Layout>
  );
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

const dueWords = (meals: number): string =>
  meals === 0 ? 'No meal falls on a feeding day of yours' : `${counted(meals, 'meal')} due`;

/** Where the act is done; an act that changes tonight's offers is done in the round. */
function placeOf({ kind, bin }: Act): { href: string; label: string } {
  if (kind === 'cut prey' || kind === 'stretch adults') return { href: paths.tonight, label: 'To the round' };
  if (kind === 'start a cup') return { href: paths.newBin, label: 'Add the cup' };
  if (kind === 'bring delivery forward' || kind === 'enlarge delivery')
    return { href: `${paths.larder}#deliveries`, label: 'To the deliveries' };
  if (bin !== null) return { href: paths.bin(bin), label: 'To the bin' };
  return { href: `${paths.larder}#deliveries`, label: 'To the deliveries' };
}

const ActHere = ({ act }: { act: Act | null }) => {
  if (act === null) return null;
  const { href, label } = placeOf(act);
  return (
    <section class="act" aria-labelledby="act">
      <h2 id="act">Do this</h2>
      <p>{act.sentence}</p>
      <dl class="before-after">
        <Changed
          what="Nobody misses"
          before={weeksIn(act.before.nothingMissed)}
          after={weeksIn(act.after.nothingMissed)}
        />
        <Changed what="In danger" before={expected(act.before.dangers)} after={expected(act.after.dangers)} />
        <Changed
          what="Meals missed"
          before={expected(act.before.missedMeals)}
          after={expected(act.after.missedMeals)}
        />
      </dl>
      <a class="button act-here" href={href}>
        {label}
      </a>
    </section>
  );
};

/** What an act changes; what stays the same in words is left out. */
const Changed = ({ what, before, after }: { what: string; before: string; after: string }) =>
  before === after ? null : (
    <div>
      <dt>{what}</dt>
      <dd>
        <span class="unseen">now </span>
        {before} <span aria-hidden="true">→</span>
        <span class="unseen">, then </span> <b>{after}</b>
      </dd>
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
