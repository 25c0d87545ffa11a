/** Numbers with where they come from and how far to trust them. */
import type { Child } from 'hono/jsx';
import type { Status } from '../../src/husbandry/sourced.ts';
import { counted } from '../format.ts';
import { paths } from '../paths.ts';

export interface SourceLine {
  /** What the number is, such as 'Wait after a moult'. */
  readonly what: string;
  /** With its unit, such as '7 days'. */
  readonly value: string;
  readonly status: Status;
  /** The source in full, or null when there is none. */
  readonly source: string | null;
  /** What other works say of it. */
  readonly others?: readonly OtherWork[];
  /** Why this value is the default where they disagree. */
  readonly why?: string | null;
}

/** What another work says of a number, with its source in full. */
export interface OtherWork {
  readonly said: string;
  readonly source: string | null;
}

export const STATUS_WORDS: Readonly<Record<Status, string>> = {
  published: 'published',
  'common practice': 'common practice, no source',
  'from memory': 'from memory, unchecked',
  yours: 'yours',
};

interface SourcesTableProps {
  readonly class?: string;
  readonly summary: string;
  /** Head of the first column. */
  readonly what: string;
  readonly children?: Child;
  /** Below the table. */
  readonly foot?: Child;
}

/** Sourced numbers behind a disclosure: what, value, standing, source. */
export const SourcesTable = ({
  class: look = 'sources',
  summary,
  what,
  children,
  foot,
}: SourcesTableProps) => (
  <details class={look}>
    <summary>{summary}</summary>
    <div class="scroller">
      <table class="stacks">
        <thead>
          <tr>
            {[what, 'Value', 'Standing', 'Source'].map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
    {foot}
  </details>
);

interface SourcesProps {
  readonly sources: readonly SourceLine[];
  /** 'Growth: 12 numbers'; absent: how many were used. */
  readonly summary?: string;
}

export const Sources = ({ sources, summary }: SourcesProps) =>
  sources.length === 0 ? null : (
    <SourcesTable
      summary={
        summary ??
        `${counted(sources.length, 'number')} used, with ${sources.length === 1 ? 'its source' : 'their sources'}`
      }
      what="Number"
      foot={<ToMethod />}
    >
      {sources.map((line) => (
        <tr>
          <th scope="row">{line.what}</th>
          <td>{line.value}</td>
          <td data-label="Standing">{STATUS_WORDS[line.status]}</td>
          <td data-label="Source">
            {line.source ?? '–'}
            <Disputed others={line.others ?? []} why={line.why ?? null} />
          </td>
        </tr>
      ))}
    </SourcesTable>
  );

const ToMethod = () => (
  <p class="note">
    <a href={paths.method}>What is made of these numbers</a>
  </p>
);

/** 'Others say: 38 days at 25 °C (a work).' */
export const otherWords = ({ said, source }: OtherWork): string =>
  `Others say: ${said}${source === null ? '' : ` (${source})`}.`;

/** Where works disagree: what the others say, and why the value shown is the one used. */
export const Disputed = ({ others, why }: { others: readonly OtherWork[]; why: string | null }) => (
  <>
    {others.map((other) => (
      <p>{otherWords(other)}</p>
    ))}
    {why === null ? null : <p>Why not theirs: {why}.</p>}
  </>
);
