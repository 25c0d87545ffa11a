/** How everything is worked out: one topic a screen, with its equations, sources and the numbers you can change. */
import { Layout, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { History, type HistoryLine } from '../partials/history.tsx';
import {
  NumberForm,
  type NumberFormProps,
  type NumberGroup,
  NumberGroups,
  ResetNumbers,
} from '../partials/number-form.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import { BulkOrder } from './method-bulk.tsx';
import { ColonyTopics } from './method-colony.tsx';
import { HowPlanned } from './method-plan.tsx';
import { PreyTopics } from './method-prey.tsx';
import { Senders } from './method-senders.tsx';
import { WeekTopics } from './method-week.tsx';

export interface MethodProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly revision: number;
  readonly groups: readonly NumberGroup[];
  /** The form that is open. */
  readonly form: NumberFormProps | null;
  /** Numbers of the method that are not for changing. */
  readonly fixed: readonly SourceLine[];
  readonly history: readonly HistoryLine[];
}

const TOPICS = [
  ['growth', 'Growth by temperature'],
  ['stages', 'Stages and deaths'],
  ['day', 'One day of a bin'],
  ['crowding', 'Crowding'],
  ['colony', 'Growth of a colony'],
  ['harvest', 'Lasting harvest'],
  ['doubt', 'Doubt of a bin'],
  ['learning', 'Learning'],
  ['matching', 'Prey that suits'],
  ['demand', 'Demand'],
  ['allocation', 'Who gets what'],
  ['verdict', 'Lasts, tight, short'],
  ['senders', 'Who sends'],
  ['plan', 'How a plan is chosen'],
  ['bulk', 'How many a box should hold'],
] as const;

export const MethodPage = (props: MethodProps) => (
  <Layout shell={props.shell} title="The method" here="more">
    <header class="page-head">
      <p class="eyebrow">
        <a href={paths.book}>The Book</a>
      </p>
      <h1>The method</h1>
      <p class="lede">
        Prey is followed day by day through its life, animals from meal to meal, and the coming week is played
        through many times. Here is every equation, where it comes from, and the numbers you may set.
      </p>
      <nav aria-label="Topics">
        <ul class="name-list">
          {TOPICS.map(([id, title]) => (
            <li>
              <a href={`#${id}`}>{title}</a>
            </li>
          ))}
        </ul>
      </nav>
    </header>
    {props.form === null ? null : <NumberForm {...props.form} />}
    <PreyTopics />
    <ColonyTopics />
    <WeekTopics numbersOf={numbersOf(props)} />
    <Senders />
    {numbersOf(props)('Who sends')}
    <HowPlanned />
    {numbersOf(props)(...PLAN)}
    <BulkOrder />
    <section class="method-topic" aria-labelledby="others">
      <h2 id="others">Other numbers of the method</h2>
      <NumberGroups
        {...props}
        {...ACTS}
        groups={props.groups.filter(({ about }) => !IN_TOPICS.includes(about))}
      />
      <ResetNumbers {...props} {...ACTS} />
      <Sources sources={props.fixed} summary={`${props.fixed.length} numbers of its inner workings`} />
      <p>
        The numbers of each prey species stand on its own page of <a href={paths.book}>the Book</a>.
      </p>
    </section>
    <History title="What you changed" lines={props.history} formId={props.forms.formId} />
  </Layout>
);

const PLAN = ['Plan: meals', 'Plan: prey', 'Plan: your time'];

/** Groups shown with the topic that uses them. */
const IN_TOPICS: readonly string[] = [
  'Doubt of a bin',
  'Bins unlike the Book',
  'Demand',
  'Verdict',
  'Who sends',
  ...PLAN,
];

const ACTS = { reset: paths.methodAct('reset'), change: paths.changeMethod };

const numbersOf =
  (props: MethodProps) =>
  (...abouts: readonly string[]) => (
    <NumberGroups {...props} {...ACTS} groups={props.groups.filter(({ about }) => abouts.includes(about))} />
  );
