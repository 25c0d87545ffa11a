/** Labels for enclosures, bins and cups: which, how large, on what paper, and the sheets themselves. */
import { counted } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { CheckButtons, RadioButtons, Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type Option, type PageForms, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import {
  LABEL_MM,
  LabelSheets,
  type LabelSize,
  type LabelText,
  labelsPerSheet,
  type Paper,
} from './label-sheets.tsx';

/** What is asked for, sent as these names; `code` and `of` may come more than once. */
export interface LabelsAsked {
  readonly of: readonly string[];
  readonly which: 'all' | 'shelf' | 'new' | 'ticked';
  readonly shelf: string;
  /** A date, '' for none. */
  readonly since: string;
  readonly code: readonly string[];
  readonly size: LabelSize;
  readonly paper: Paper;
  readonly skip: number;
  /** Labels before this one are on sheets already printed. */
  readonly from: number;
}

export interface LabelsProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly asked: LabelsAsked;
  /** Null until labels are asked for. */
  readonly labels: readonly LabelText[] | null;
  /** Labels asked for, on this page or not. */
  readonly total: number;
  /** Address of those that follow. */
  readonly next: string | null;
  /** The address can only be opened on this very machine. */
  readonly onlyHere: boolean;
  readonly shelves: readonly string[];
  readonly animals: readonly Option[];
  readonly bins: readonly Option[];
}

export const LabelsPage = (props: LabelsProps) => {
  const { shell, labels, asked, onlyHere, next } = props;
  return (
    <Layout shell={shell} title="Labels" here="more">
      <header class="page-head no-print">
        <h1>{headline(props)}</h1>
        {labels === null || labels.length === 0 ? (
          <p>Each has a short code, its address and a small code to scan: a phone’s camera opens its page.</p>
        ) : (
          <p>Print this page at 100 % on {PAPERS[asked.paper]} and cut along the lines.</p>
        )}
        {onlyHere ? (
          <p class="caution">
            You opened this page by an address of this machine alone, which a phone cannot open. Open it by
            the address your phone uses, and the labels will carry that.
          </p>
        ) : null}
      </header>
      {labels === null || labels.length === 0 ? (
        <Chooser {...props} />
      ) : (
        <>
          <details class="no-print">
            <summary>Choose others, another size or paper</summary>
            <Chooser {...props} />
          </details>
          {next === null ? null : (
            <p class="no-print">
              <a href={next}>The next labels</a>, once these are printed.
            </p>
          )}
          <LabelSheets labels={labels} {...asked} />
        </>
      )}
    </Layout>
  );
};

const PAPERS: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'US Letter' };

function headline({ labels, asked, total }: LabelsProps): string {
  if (labels === null) return 'Which labels do you want?';
  if (labels.length === 0) return 'Nothing here matches this';
  const sheets = Math.ceil((labels.length + asked.skip) / labelsPerSheet(asked.size, asked.paper));
  const these = `${counted(labels.length, 'label')} on ${counted(sheets, 'sheet')}`;
  return labels.length === total
    ? these
    : `${these}, beginning with number ${asked.from + 1} of ${total.toLocaleString('en-GB')}`;
}

const KINDS: readonly Option[] = [
  { value: 'animals', label: 'Enclosures' },
  { value: 'bins', label: 'Bins and colonies' },
  { value: 'cups', label: 'Cups' },
];
const WHICH: readonly Option[] = [
  { value: 'all', label: 'All' },
  { value: 'shelf', label: 'One shelf' },
  { value: 'new', label: 'New since a day' },
  { value: 'ticked', label: 'Those ticked' },
];
const SIZES: readonly Option[] = (['small', 'medium', 'large'] as const).map((size) => ({
  value: size,
  label: `${LABEL_MM[size].join(' × ')} mm`,
}));
const PAPER_OPTIONS: readonly Option[] = Object.entries(PAPERS).map(([value, label]) => ({ value, label }));

const Chooser = ({ forms, asked, shelves, animals, bins }: LabelsProps) => {
  const { which, shelf, since, size, paper, skip } = asked;
  const values = { which, shelf, since, size, paper, skip: `${skip}` };
  const entry = { ...entryOf(forms, 'labels'), values };
  return (
    <form method="get" action={paths.labels} class="form no-print">
      <CheckButtons entry={entry} name="of" legend="Labels for" options={KINDS} checked={asked.of} />
      <RadioButtons entry={entry} name="which" legend="Which" options={WHICH} />
      <Select
        entry={entry}
        name="shelf"
        label="Shelf"
        options={shelves.map((value) => ({ value, label: value }))}
        none="Any shelf"
        hint="For “One shelf”."
      />
      <Field
        entry={entry}
        name="since"
        label="Entered on or after"
        type="date"
        hint="For “New since a day”."
      />
      <Ticks title="Tick animals" options={animals} ticked={asked.code} />
      <Ticks title="Tick bins and cups" options={bins} ticked={asked.code} />
      <RadioButtons entry={entry} name="size" legend="Size" options={SIZES} />
      <RadioButtons entry={entry} name="paper" legend="Paper" options={PAPER_OPTIONS} />
      <Field entry={entry} name="skip" label="Places already used on the first sheet" type="number" min="0" />
      <button type="submit">Show the labels</button>
    </form>
  );
};

interface TicksProps {
  readonly title: string;
  readonly options: readonly Option[];
  readonly ticked: readonly string[];
}

const Ticks = ({ title, options, ticked }: TicksProps) =>
  options.length === 0 ? null : (
    <details open={options.some(({ value }) => ticked.includes(value))}>
      <summary>{title}</summary>
      <div class="choice-row">
        {options.map(({ value, label }) => (
          <Toggle name="code" value={value} label={label} checked={ticked.includes(value)} />
        ))}
      </div>
    </details>
  );
