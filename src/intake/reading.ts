/** What reading a file answers: each row with its verdict, what must be asked, and what is wrong. */
import type { Problem } from '../husbandry/problems.ts';
import type { DateOrder } from './cells/date-order.ts';
import type { ColumnMatch } from './columns/mapping.ts';
import type { Encoding } from './file/bytes.ts';
import type { Separator } from './file/records.ts';

/** 'asked': waits for an answer or a choice; 'refused': nothing can be told from it, or the keeper left it out. */
export type Verdict = 'new' | 'changed' | 'same' | 'asked' | 'refused';

/** What was noticed on a row: trouble with a value, or how it was read. */
export interface Note extends Problem {
  readonly weight: 'trouble' | 'said';
}

export interface Change {
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
}

export interface RowReading<E> {
  /** Row of the file as a spreadsheet counts it; a row split by sex gives several readings. */
  readonly row: number;
  readonly verdict: Verdict;
  /** The row in the keeper's own words, to show beside the verdict. */
  readonly written: string;
  /** Code of the record it is about; null for a new one. */
  readonly code: string | null;
  /** What the record will be; null when asked or refused. */
  readonly becomes: E | null;
  readonly changes: readonly Change[];
  readonly notes: readonly Note[];
}

export interface Choice {
  readonly code: string;
  readonly name: string;
}

/** A question put once for all rows it concerns. */
export interface Ask {
  readonly about: 'kind' | 'prey' | 'unit';
  /** The text asked about: the key of its answer. */
  readonly text: string;
  readonly rows: readonly number[];
  readonly sentence: string;
  /** Likely answers; others are allowed. */
  readonly near: readonly Choice[];
}

export interface Reading<E> {
  /** Whether it can be written as it stands: no problem and no open question. Write nothing of a reading that is not. */
  readonly ready: boolean;
  readonly rows: readonly RowReading<E>[];
  readonly tally: Readonly<Record<Verdict, number>>;
  readonly problems: readonly Problem[];
  readonly asks: readonly Ask[];
  /** Which heading is read as which column, and whether that is a guess. */
  readonly columns: readonly ColumnMatch[];
  readonly headings: readonly string[];
  /** Headings that are not read. */
  readonly unused: readonly string[];
  readonly remarks: readonly string[];
  readonly dateOrder: DateOrder | null;
  readonly separator: Separator | null;
  readonly encoding: Encoding | null;
}

export const said = (code: string, sentence: string): Note => ({ code, sentence, weight: 'said' });
export const trouble = (found: Problem): Note => ({ ...found, weight: 'trouble' });

const NO_ROWS: Readonly<Record<Verdict, number>> = { new: 0, changed: 0, same: 0, asked: 0, refused: 0 };

export function tallyOf(rows: readonly { readonly verdict: Verdict }[]): Record<Verdict, number> {
  const tally = { ...NO_ROWS };
  for (const { verdict } of rows) tally[verdict] += 1;
  return tally;
}

/** The reading of a file of which nothing could be read. */
export const unreadable = (found: Problem): Reading<never> => ({
  ready: false,
  rows: [],
  tally: NO_ROWS,
  problems: [found],
  asks: [],
  columns: [],
  headings: [],
  unused: [],
  remarks: [],
  dateOrder: null,
  separator: null,
  encoding: null,
});
