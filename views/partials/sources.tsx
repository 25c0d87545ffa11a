/** Numbers with where they come from and how far to trust them. */
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

export const Sources = ({ sources }: { sources: readonly SourceLine[] }) =>
  sources.length === 0 ? null : (
    <details class="sources">
      <summary>{sources.length} numbers used, with their sources</summary>
      <div class="scroller">
        <table>
          <thead>
            <tr>
              <th scope="col">Number</th>
              <th scope="col">Value</th>
              <th scope="col">Standing</th>
              <th scope="col">Source</th>
            </tr>
          </thead>
          <tbody>
            {sources.map(({ what, value, status, source }) => (
              <tr>
                <th scope="row">{what}</th>
                <td>{value}</td>
                <td>{STATUS_WORDS[status]}</td>
                <td>{source ?? '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
