/** A list line by line: the row, what becomes of it, what is to be noted. */
import type { Problem } from '../../src/husbandry/problems.ts';

export type RowVerdict = 'new' | 'changed' | 'same' | 'asked' | 'refused';

/** A question put once for all the rows it concerns. */
export interface Question {
  readonly about: 'kind' | 'prey' | 'unit';
  /** The text asked about. */
  readonly text: string;
  readonly sentence: string;
  readonly near: readonly { readonly code: string; readonly name: string }[];
}

/** What a file was read as; a part of what the reader of lists answers. */
export interface ListReading {
  readonly ready: boolean;
  readonly rows: readonly {
    readonly row: number;
    readonly verdict: RowVerdict;
    readonly written: string;
    readonly notes: readonly (Problem & { readonly weight: 'trouble' | 'said' })[];
  }[];
  readonly tally: Readonly<Record<RowVerdict, number>>;
  readonly problems: readonly Problem[];
  readonly asks: readonly Question[];
  readonly columns: readonly { readonly column: string; readonly heading: string }[];
  readonly headings: readonly string[];
  readonly remarks: readonly string[];
  readonly dateOrder: 'dmy' | 'mdy' | 'ymd' | null;
}

const VERDICT_WORDS: Readonly<Record<RowVerdict, string>> = {
  new: 'new',
  changed: 'changed',
  same: 'same',
  asked: 'asked',
  refused: 'left out',
};

export const Lines = ({ reading }: { reading: ListReading }) => (
  <table class="import-lines stacks">
    <caption>Line by line</caption>
    <thead>
      <tr>
        <th scope="col" class="number">
          Row
        </th>
        <th scope="col">Becomes</th>
        <th scope="col">As written</th>
        <th scope="col">Notes</th>
      </tr>
    </thead>
    <tbody>
      {reading.rows.map(({ row, verdict, written, notes }) => (
        <tr class={`is-${verdict}`}>
          <th scope="row" class="number">
            {row}
          </th>
          <td data-label="Becomes">{VERDICT_WORDS[verdict]}</td>
          <td data-label="As written">{written}</td>
          <td data-label="Notes">
            {notes.map(({ sentence, weight }) => (
              <p class={weight === 'trouble' ? 'problem' : 'note'}>{sentence}</p>
            ))}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
