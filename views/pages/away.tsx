/** When you are away: who can wait, who eats before you leave, and on which evenings somebody must come. */
import type { AwayPlan } from '../../src/husbandry/supply/index.ts';
import { AwayDays } from '../charts/away-days.tsx';
import { counted, dayRange, type LengthUnit, listed, longDay, shortDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { Names } from '../names.ts';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, type PageForms, PostForm } from '../partials/form.tsx';
import { Sources } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import type { AwayAnswer } from './away-answer.ts';
import { Before, SitterEvenings } from './away-evenings.tsx';
import { OtherStandings } from './away-lists.tsx';

/**
 * Asks itself by GET: `from`, `to` (YYYY-MM-DD), `also` ('on': those who would only miss a meal are fed too). Saving
 * posts `from` and `to` to `paths.away`.
 */
export interface AwayProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly names: Names;
  readonly unit: LengthUnit;
  /** The days asked about, as typed. */
  readonly asked: FormEntry;
  /** Null until two days are given. */
  readonly answer: AwayAnswer | null;
  /** Days away in the calendar that are not over. */
  readonly planned: readonly { readonly from: string; readonly to: string; readonly label: string }[];
}

export const AwayPage = (props: AwayProps) => (
  <Layout shell={props.shell} title="When you are away" here="more">
    <div class="away">
      <header class="page-head">
        {props.answer === null ? <Asking /> : <Answer {...props} answer={props.answer} />}
      </header>
      {props.answer === null ? <Dates {...props} /> : <Plan {...props} answer={props.answer} />}
    </div>
  </Layout>
);

const Asking = () => (
  <>
    <h1>When you are away</h1>
    <p class="lede">
      Give the days. This page then says who can safely wait, who eats on the evening before you leave, on
      which evenings somebody must come, and prints a sheet for that person.
    </p>
  </>
);

type Answered = AwayProps & { readonly answer: AwayAnswer };

/** '121 of 148 animals can wait until you are back; 27 need a sitter on 2 evenings'. */
function awayHeadline({ animals, visits }: AwayPlan): string {
  const need = animals.filter(({ standing }) => standing === 'needs a sitter').length;
  if (animals.length === 0) return 'Nobody lives here yet, so nobody waits for you';
  if (need === 0) return `All ${counted(animals.length, 'animal')} can wait until you are back`;
  const sitter = `${counted(need, 'needs', 'need')} a sitter on ${counted(visits.length, 'evening')}`;
  const wait = animals.length - need;
  return wait === 0
    ? `Of ${counted(animals.length, 'animal')} none can wait: ${sitter}`
    : `Of ${counted(animals.length, 'animal')} ${wait} can safely wait until you are back; ${sitter}`;
}

function dangerWords({ animals }: AwayPlan): string {
  const danger = animals.filter(({ standing, danger: risk }) => risk && standing === 'needs a sitter').length;
  if (danger === 0) return '';
  return `If nobody comes, ${counted(danger, 'animal would pass', 'animals would pass')} the longest time that is safe without food. `;
}

const Answer = ({ answer }: Answered) => {
  const { plan } = answer;
  const early = plan.animals.filter(({ fedBefore }) => fedBefore).length;
  return (
    <>
      <p class="eyebrow">Away {dayRange(plan.absence.from, plan.absence.to)}</p>
      <h1>{awayHeadline(plan)}</h1>
      <p class="lede">
        {dangerWords(plan)}
        {early === 0 || plan.absence.eve === null
          ? ''
          : `${counted(early, 'animal eats', 'animals eat')} early, on ${longDay(plan.absence.eve)}, so that they can wait. `}
        You feed again on {longDay(plan.absence.fedAgain)}.
      </p>
    </>
  );
};

const Plan = (props: Answered) => {
  const { answer, names } = props;
  const { plan } = answer;
  return (
    <>
      <div class="acts">
        {plan.visits.length === 0 ? null : (
          <a class="button act-here" href={sheetAt(props)}>
            Print the sitter's sheet
          </a>
        )}
        <SaveDays {...props} />
      </div>
      {plan.visits.length === 0 ? null : <AwayDays id="away-days" plan={plan} names={names} />}
      <Parcels {...props} />
      <Before {...props} />
      <SitterEvenings {...props} />
      <OtherStandings plan={plan} names={names} />
      <section aria-labelledby="other-days">
        <h2 id="other-days">Other days</h2>
        <Dates {...props} />
      </section>
      <Assumed />
      <Sources sources={answer.sources} />
    </>
  );
};

const sheetAt = ({ answer, asked }: Answered): string =>
  paths.awaySheet({ from: answer.from, to: answer.to, also: asked.values.also === 'on' });

const SaveDays = ({ answer, forms }: Answered) =>
  answer.saved ? (
    <p class="note saved">
      These days are in your calendar.{' '}
      {answer.lost.length === 0
        ? 'None of them is a feeding day, so the '
        : `The feeding ${answer.lost.length === 1 ? 'day' : 'days'} ${listed(answer.lost.map(shortDay))} ${answer.lost.length === 1 ? 'falls' : 'fall'} away, and the `}
      <a href={paths.sunday}>Sunday check</a> {answer.lost.length === 0 ? 'stays as it is.' : 'counts it so.'}
    </p>
  ) : (
    <PostForm entry={entryOf(forms, 'away-save')} action={paths.away} class="inline">
      <input type="hidden" name="from" value={answer.from} />
      <input type="hidden" name="to" value={answer.to} />
      <button type="submit">Put these days in the calendar</button>
    </PostForm>
  );

const Parcels = ({ answer }: Answered) =>
  answer.parcels.length === 0 ? null : (
    <section aria-labelledby="parcels">
      <h2 id="parcels">A parcel comes while nobody is there</h2>
      <ul>
        {answer.parcels.map(({ label, day }) => (
          <li>
            {label}, {longDay(day)}. Ask for another day, or have it taken in and opened the same day.
          </li>
        ))}
      </ul>
    </section>
  );

const Dates = ({ asked, planned }: AwayProps) => (
  <>
    {planned.length === 0 ? null : (
      <p>
        In your calendar:{' '}
        {planned.map(({ from, to, label }, i) => (
          <>
            {i > 0 ? ', ' : ''}
            <a href={paths.awayOn({ from, to })}>{label}</a>
          </>
        ))}
        .
      </p>
    )}
    <form method="get" action={paths.away} class="form" id={asked.name}>
      <Field entry={asked} name="from" label="First day away" type="date" required />
      <Field entry={asked} name="to" label="Last day away" type="date" required />
      <Toggle
        name="also"
        value="on"
        label="The sitter also feeds those who would only miss a meal"
        checked={asked.values.also === 'on'}
      />
      <button type="submit">Who can wait?</button>
    </form>
  </>
);

const Assumed = () => (
  <p class="note assumed">
    Taken as given: your usual evenings until you leave happen, a meal offered in time is eaten, and bins grow
    at their likeliest. An animal waits safely when its safe gap outlasts the day you feed again by the days
    kept to spare. A hidden moult can change any of it: who is found on its back is left alone.
  </p>
);
