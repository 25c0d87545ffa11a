/** The dry run of a list: questions first, then every line with what would become of it, then the button. */
import type { Problem } from '../../src/husbandry/problems.ts';
import { counted, listed } from '../format.ts';
import { entryOf, type FormEntry, type Option, type PageForms, PostForm, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { Lines, type ListReading, type Question, type RowVerdict } from './import-lines.tsx';

export interface Draft {
  /** Names the text kept on the server, posted as `draft`. */
  readonly id: string;
  readonly what: 'animals' | 'stock';
  readonly reading: ListReading;
  /** Our columns with their words, in the order shown. */
  readonly columns: readonly Option[];
  /** Every kind or prey species, for questions. */
  readonly choices: readonly Option[];
}

/**
 * Form 'check' posts `draft`, `answer:<text>` (a code, or '-' to leave those rows out), `unit`, `dates`,
 * `column:<ours>` (a heading, '' for none) to `paths.importCheck`; form 'confirm' posts `draft` to
 * `paths.importConfirm`.
 */
interface DryRunProps {
  readonly forms: PageForms;
  readonly draft: Draft;
}

export const DryRun = ({ forms, draft }: DryRunProps) => {
  const { reading } = draft;
  return (
    <>
      <header class="page-head">
        <h1>{headline(draft)}</h1>
        <p class="lede">{tallyWords(reading)}. Nothing is written yet.</p>
        {[...otherProblems(reading).map(({ sentence }) => sentence), ...reading.remarks].map((sentence) => (
          <p class="note">{sentence}</p>
        ))}
      </header>
      <Questions forms={forms} draft={draft} />
      {reading.ready ? <Confirm forms={forms} draft={draft} /> : null}
      <Lines reading={reading} />
      <p>
        <a href={paths.import}>Start again with another list</a>
      </p>
    </>
  );
};

/** The order of day and month is a question with its own answer; the rest can only be read. */
const isOfDates = ({ code }: Problem): boolean => code.startsWith('dates-');
const dateProblems = ({ problems }: ListReading): readonly Problem[] => problems.filter(isOfDates);
const otherProblems = ({ problems }: ListReading): readonly Problem[] =>
  problems.filter((each) => !isOfDates(each));

function headline({ reading, what }: Draft): string {
  const thing = what === 'animals' ? 'animal' : 'bin';
  const questions = reading.asks.length + Number(dateProblems(reading).length > 0);
  if (questions > 0) return `${counted(questions, 'question')} before it can be written`;
  const { new: added, changed } = reading.tally;
  if (added + changed === 0) return reading.ready ? 'Nothing in it is new' : 'This list cannot be read yet';
  return `Ready: ${counted(added, `new ${thing}`)}${changed > 0 ? `, ${changed} changed` : ''}`;
}

const TALLY_WORDS: readonly (readonly [RowVerdict, string])[] = [
  ['new', 'new'],
  ['changed', 'changed'],
  ['same', 'the same'],
  ['asked', 'waiting for an answer'],
  ['refused', 'left out'],
];

const tallyWords = ({ rows, tally }: ListReading): string => {
  const words = TALLY_WORDS.filter(([verdict]) => tally[verdict] > 0).map(
    ([verdict, word]) => `${tally[verdict]} ${word}`,
  );
  return words.length === 0 ? 'No rows' : `${counted(rows.length, 'line')}: ${listed(words)}`;
};

const DATE_ORDERS: readonly Option[] = [
  { value: 'dmy', label: 'Day first: 21/3/2026' },
  { value: 'mdy', label: 'Month first: 3/21/2026' },
  { value: 'ymd', label: 'Year first: 2026-03-21' },
];
const UNITS: readonly Option[] = [
  { value: 'in', label: 'Inches' },
  { value: 'cm', label: 'Centimetres' },
  { value: 'mm', label: 'Millimetres' },
];

const Questions = ({ forms, draft }: DryRunProps) => {
  const entry = entryOf(forms, 'check');
  const { reading, columns } = draft;
  const headings = reading.headings.map((heading) => ({ value: heading, label: heading }));
  const ofDates = dateProblems(reading);
  const dates = (label: string) => (
    <Select
      entry={entry}
      name="dates"
      label={label}
      options={DATE_ORDERS}
      start={reading.dateOrder ?? ''}
      none="As the list shows"
    />
  );
  const mapped = (ours: string) => reading.columns.find(({ column }) => column === ours)?.heading ?? '';
  return (
    <PostForm entry={entry} action={paths.importCheck} class="form sheet">
      <input type="hidden" name="draft" value={draft.id} />
      {reading.asks.map((ask) => (
        <Answer entry={entry} ask={ask} draft={draft} />
      ))}
      {ofDates.length > 0 ? dates(ofDates.map(({ sentence }) => sentence).join(' ')) : null}
      <details open={reading.asks.length === 0 && ofDates.length === 0 && !reading.ready}>
        <summary>How the columns and dates were read</summary>
        <div class="pair">
          {columns.map(({ value, label }) => (
            <Select
              entry={entry}
              name={`column:${value}`}
              label={label}
              options={headings}
              start={mapped(value)}
              none="not in the list"
            />
          ))}
          {ofDates.length === 0 ? dates('Dates') : null}
        </div>
      </details>
      <button type="submit" class={reading.ready ? 'quiet' : 'act-here'}>
        Read it again
      </button>
    </PostForm>
  );
};

const Answer = ({ entry, ask, draft }: { entry: FormEntry; ask: Question; draft: Draft }) => {
  if (ask.about === 'unit')
    return <Select entry={entry} name="unit" label={ask.sentence} options={UNITS} none="Choose a unit" />;
  const near = ask.near.map(({ code, name }) => ({ value: code, label: name, group: 'Perhaps' }));
  const rest = draft.choices.map((choice) => ({ ...choice, group: choice.group ?? 'All' }));
  return (
    <Select
      entry={entry}
      name={`answer:${ask.text}`}
      label={ask.sentence}
      none="Choose"
      options={[...near, ...rest, { value: '-', label: 'Leave these rows out', group: 'Or' }]}
    />
  );
};

const Confirm = ({ forms, draft }: DryRunProps) => (
  <PostForm entry={entryOf(forms, 'confirm')} action={paths.importConfirm} class="closing">
    <input type="hidden" name="draft" value={draft.id} />
    <button type="submit" class="act-here big">
      Write it down
    </button>
    <p class="note">You can undo it as one step.</p>
  </PostForm>
);
