/** The history: everything that was done here, newest first, each step with its undo. */
import { grouped } from '../../src/husbandry/grouped.ts';
import { fullDay, shortDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { entryOf, type Option, type PageForms, Select } from '../partials/form.tsx';
import { type StepLine, StepList } from '../partials/step-list.tsx';
import { paths } from '../paths.ts';

/** What is looked for, '' for anything; sent as `animal`, `bin`, `group` and `q`. */
export interface HistorySought {
  readonly animal: string;
  readonly bin: string;
  readonly group: string;
  readonly words: string;
}

export interface HistoryProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly sought: HistorySought;
  /** Page shown, from 0. */
  readonly at: number;
  /** Whether there are older ones. */
  readonly more: boolean;
  readonly lines: readonly StepLine[];
  /** The last act that wrote of many at once. */
  readonly batch: StepLine | null;
  readonly animals: readonly Option[];
  readonly bins: readonly Option[];
  readonly groups: readonly Option[];
}

export const HistoryPage = (props: HistoryProps) => {
  const { shell, forms, lines, batch } = props;
  return (
    <Layout shell={shell} title="History" here="more">
      <header class="page-head">
        <h1>{headline(props)}</h1>
        <p>
          Nothing is ever thrown away: what you undo stays on record and can be done again.{' '}
          <a href={paths.gone}>Who and what is gone</a>
        </p>
      </header>
      {batch === null ? null : (
        <section aria-labelledby="batch" class="last-batch">
          <h2 id="batch">Last done in one go</h2>
          <StepList lines={[{ ...batch, time: shortDay(batch.day) }]} formId={`${forms.formId}.batch`} />
          <p class="note">Stands here for 30 days, whatever you write down after it.</p>
        </section>
      )}
      <Sought {...props} />
      {byDay(lines).map(([day, here]) => (
        <section aria-labelledby={`day-${day}`}>
          <h2 id={`day-${day}`}>{day === shell.today ? 'Today' : fullDay(day)}</h2>
          <StepList lines={here} formId={forms.formId} />
        </section>
      ))}
      <Pages {...props} />
    </Layout>
  );
};

const isAll = ({ animal, bin, group, words }: HistorySought): boolean =>
  [animal, bin, group, words].every((said) => said === '');

function headline({ lines, sought, at }: HistoryProps): string {
  if (lines.length > 0 || at > 0) return isAll(sought) ? 'What was done' : 'What was done, as you asked';
  return isAll(sought) ? 'Nothing is written down yet' : 'Nothing on record matches this';
}

const byDay = (lines: readonly StepLine[]) => [...grouped(lines, ({ day }) => day)];

const Sought = ({ sought, animals, bins, groups, forms }: HistoryProps) => {
  const { animal, bin, group, words } = sought;
  const entry = { ...entryOf(forms, 'sought'), values: { animal, bin, group } };
  return (
    <search>
      <form method="get" action={paths.history} class="sought">
        <div class="search">
          <label for="q">Find words or names</label>
          <input id="q" name="q" type="search" value={words} aria-keyshortcuts="/" />
          <button type="submit">Find</button>
          {isAll(sought) ? null : <a href={paths.history}>Show all</a>}
        </div>
        <details open={[animal, bin, group].some((said) => said !== '')}>
          <summary>Only one animal, one bin, one kind of act</summary>
          <div class="narrow">
            <Select entry={entry} name="animal" label="Animal" options={animals} none="Any" />
            <Select entry={entry} name="bin" label="Bin" options={bins} none="Any" />
            <Select entry={entry} name="group" label="What was done" options={groups} none="Anything" />
          </div>
        </details>
      </form>
    </search>
  );
};

const Pages = ({ sought, at, more }: HistoryProps) => {
  const to = (page: number): string => {
    const said = Object.entries({ ...sought, words: '', q: sought.words, page: page === 0 ? '' : `${page}` });
    const asked = new URLSearchParams(said.filter(([, value]) => value !== '')).toString();
    return asked === '' ? paths.history : `${paths.history}?${asked}`;
  };
  if (at === 0 && !more) return null;
  return (
    <nav class="acts" aria-label="Older and newer">
      {at > 0 ? (
        <a class="button quiet" href={to(at - 1)}>
          Newer
        </a>
      ) : null}
      {more ? (
        <a class="button quiet" href={to(at + 1)}>
          Older
        </a>
      ) : null}
    </nav>
  );
};
