/** Numbers with where they come from and how far to trust them. */
import type { Child } from 'hono/jsx';
import type { Status } from '../../src/husbandry/sourced.ts';

export interface SourceLine {
  /** What the number is, such as 'Wait after a moult'. */
  readonly what: string;
  /** With its unit, such as '7 days'. */
  readonly value: string;
  readonly status: Status;
  /** The source in full, or null when there is none. */
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
}

/** Sourced numbers behind a disclosure: what, value, standing, source. */
export const SourcesTable = ({ class: look = 'sources', summary, what, children }: SourcesTableProps) => (
  <details class={look}>
    <summary>{summary}</summary>
    <div class="scroller">
      <table>
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
  </details>
);

export const Sources = ({ sources }: { sources: readonly SourceLine[] }) =>
  sources.length === 0 ? null : (
    <SourcesTable summary={`${sources.length} numbers used, with their sources`} what="Number">
      {sources.map(({ what, value, status, source }) => (
        <tr>
          <th scope="row">{what}</th>
          <td>{value}</td>
          <td>{STATUS_WORDS[status]}</td>
          <td>{source ?? '–'}</td>
        </tr>
      ))}
    </SourcesTable>
  );
