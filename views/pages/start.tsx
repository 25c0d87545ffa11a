/** A room of one's own in three steps: who eats, how warm it is and when you feed, what there is to eat. */
import type { Child } from 'hono/jsx';
import type { FeedingCalendar } from '../../src/husbandry/calendar.ts';
import type { Room } from '../../src/husbandry/snapshot.ts';
import { counted } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { entryOf, type Option, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { QuickAnimal, QuickBin, QuickDays, QuickRoom } from './start-forms.tsx';

export interface StartProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  /** Heads that live here, and bins, colonies and cups. */
  readonly heads: number;
  readonly bins: number;
  /** Whether the keeper has said how warm a room is. */
  readonly warmthSaid: boolean;
  readonly rooms: readonly Room[];
  readonly calendar: FeedingCalendar;
  /** What the first answer will rest on until the keeper says more, as sentences. */
  readonly guesses: readonly string[];
  readonly kinds: readonly Option[];
  readonly stages: readonly Option[];
  readonly species: readonly Option[];
  readonly sizes: readonly Option[];
}

export const StartPage = (props: StartProps) => (
  <Layout shell={props.shell} title="Start" here="more">
    <header class="page-head">
      <h1>{headline(props)}</h1>
      {props.heads > 0 && props.bins > 0 && !props.shell.demo ? <ToTheVerdict {...props} /> : null}
    </header>
    {props.shell.demo ? <ClearFirst {...props} /> : <Steps {...props} />}
  </Layout>
);

function headline({ shell, heads, bins }: StartProps): string {
  if (shell.demo) return 'A room of your own in three steps';
  if (heads > 0 && bins > 0) return 'Your first answer is ready';
  const done = Number(heads > 0) + Number(bins > 0);
  return done === 0 ? 'Three steps to your first answer' : 'One more step to your first answer';
}

const ToTheVerdict = ({ guesses }: StartProps) => (
  <>
    <p>
      <a class="button act-here" href={paths.sunday}>
        Will the feeders last?
      </a>
    </p>
    {guesses.length === 0 ? null : (
      <section aria-labelledby="guesses">
        <h2 id="guesses">Guessed so far</h2>
        <ul>
          {guesses.map((guess) => (
            <li>{guess}</li>
          ))}
        </ul>
      </section>
    )}
  </>
);

const ClearFirst = ({ forms }: StartProps) => (
  <section class="three-steps">
    <p class="lede">
      First the invented animals and prey go, with what you ordered from the invented suppliers. What else you
      added stays, and you can undo it.
    </p>
    <PostForm entry={entryOf(forms, 'demo-remove')} action={paths.removeDemo}>
      <button type="submit" class="act-here">
        Clear the demo room
      </button>
    </PostForm>
  </section>
);

const Steps = (props: StartProps) => {
  const { heads, bins, warmthSaid } = props;
  return (
    <ol class="three-steps">
      <Step title="Who eats" done={heads > 0 ? `${counted(heads, 'animal')} so far` : null}>
        <p>
          Have a list already? <a href={paths.import}>Bring in a list</a>, or{' '}
          <a href={paths.newAnimal}>add one in full</a>.
        </p>
        <QuickAnimal {...props} />
      </Step>
      <Step title="How warm it is, and when you feed" done={warmthSaid ? 'said' : null}>
        <p>Warmth sets how fast prey grows and how often your animals moult.</p>
        {props.rooms.map((room) => (
          <QuickRoom {...props} room={room} />
        ))}
        <QuickDays {...props} />
        <p>
          More rooms, delivery days and units are in the <a href={paths.settings}>settings</a>.
        </p>
      </Step>
      <Step title="What there is to eat" done={bins > 0 ? `${counted(bins, 'bin')} so far` : null}>
        <p>
          A rough count will do. Have a list? <a href={paths.import}>Bring in a list</a>. Colonies and fly
          cups: <a href={paths.newBin}>add one in full</a>.
        </p>
        <QuickBin {...props} />
      </Step>
    </ol>
  );
};

interface StepProps {
  readonly title: string;
  /** How far it is done; null when nothing is. */
  readonly done: string | null;
  readonly children?: Child;
}

const Step = ({ title, done, children }: StepProps) => (
  <li class={done === null ? 'start-step' : 'start-step is-done'}>
    <h2>
      {title}
      {done === null ? null : <small>{done}</small>}
    </h2>
    {children}
  </li>
);
