/** Values with where they come from; the keeper's own beside what the Book says, each with its reset. */
import type { Status } from '../../src/husbandry/sourced.ts';
import { AsOf, entryOf, type PageForms } from './form.tsx';
import { Disputed, type OtherWork, SourcesTable, STATUS_WORDS } from './sources.tsx';

export interface NumberLine {
  readonly field: string;
  readonly what: string;
  /** With its unit. */
  readonly value: string;
  /** Null for what is no number and as the Book has it. */
  readonly status: Status | null;
  readonly source: string | null;
  /** Set where the keeper changed it. */
  readonly own: {
    readonly since: string;
    readonly why: string | null;
    readonly book: string;
    readonly bookStatus: Status | null;
    readonly bookSource: string | null;
  } | null;
  /** What other works say, and why the Book does not follow them. */
  readonly others?: readonly OtherWork[];
  readonly whyNotTheirs?: string | null;
}

interface OwnNumbersProps {
  readonly forms: PageForms;
  /** Where a reset posts `stage` and `field`. */
  readonly action: string;
  readonly revision: number;
  /** '' for the kind as a whole. */
  readonly stage: string;
  readonly caption: string;
  readonly lines: readonly NumberLine[];
  /** Fields that cannot be the Book's. */
  readonly fixed?: readonly string[];
}

/** A table behind a disclosure; forms 'reset-<stage>-<field>'. */
export const OwnNumbers = (props: OwnNumbersProps) => {
  const yours = props.lines.filter(({ own }) => own !== null).length;
  return (
    <SourcesTable
      class="sources own-numbers"
      summary={`${props.caption}${yours === 0 ? '' : `: ${yours} of yours`}`}
      what="What"
    >
      {props.lines.map((line) => (
        <Line {...props} line={line} />
      ))}
    </SourcesTable>
  );
};

const standing = (status: Status | null): string => (status === null ? '–' : STATUS_WORDS[status]);

const Line = ({ line, ...props }: OwnNumbersProps & { readonly line: NumberLine }) => {
  const { own } = line;
  return (
    <tr class={own === null ? '' : 'is-yours'}>
      <th scope="row">{line.what}</th>
      <td>{line.value}</td>
      <td data-label="Standing">
        {standing(line.status)}
        {own === null ? null : <small>since {own.since}</small>}
      </td>
      <td {...(own === null ? { 'data-label': 'Source' } : {})}>
        {own === null ? (line.source ?? '–') : <Beside {...props} line={line} own={own} />}
        <Disputed others={line.others ?? []} why={line.whyNotTheirs ?? null} />
      </td>
    </tr>
  );
};

type BesideProps = OwnNumbersProps & {
  readonly line: NumberLine;
  readonly own: NonNullable<NumberLine['own']>;
};

/** Why it was changed, what stood there, and the way back. */
const Beside = ({ own, line, forms, action, revision, stage, fixed = [] }: BesideProps) => (
  <>
    {own.why === null ? null : <p>{own.why}</p>}
    <p>
      The Book: {own.book}
      {own.bookStatus === null ? '' : ` (${STATUS_WORDS[own.bookStatus]})`}
      {own.bookSource === null ? '' : `; ${own.bookSource}`}
    </p>
    {fixed.includes(line.field) ? null : (
      <form method="post" action={action}>
        <input type="hidden" name="formId" value={entryOf(forms, `reset-${stage}-${line.field}`).formId} />
        <AsOf revision={revision} />
        <input type="hidden" name="stage" value={stage} />
        <input type="hidden" name="field" value={line.field} />
        <button type="submit" class="quiet small">
          Reset<span class="unseen">: {line.what}</span>
        </button>
      </form>
    )}
  </>
);
