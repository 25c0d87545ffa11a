/** Cuts text into records of cells, counted as a spreadsheet counts its rows. */
import { parse } from 'csv-parse/sync';

export type Separator = ',' | ';' | '\t' | '|';
export const SEPARATORS: readonly Separator[] = [',', ';', '\t', '|'];

export interface SheetRecord {
  /** Row as a spreadsheet counts: the first is 1, blank rows count. */
  readonly row: number;
  readonly cells: readonly string[];
}

interface CutText {
  readonly records: readonly SheetRecord[];
  /** Row of a quotation mark that never closes; the marks were then read as plain characters. */
  readonly openQuoteRow: number | null;
}

/** Export puts an apostrophe before a cell that a spreadsheet would take for a formula. */
const NEUTRALISED = /^'(?=[=+\-@])/;
/** No column of ours holds as much; the rest of such a cell is not read. */
const LONGEST_CELL = 2_500;
const INVISIBLE = /[\u00a0\u200b\u2060\ufeff]/g;

const tidyCell = (cell: string): string =>
  cell.slice(0, LONGEST_CELL).replace(INVISIBLE, ' ').trim().replace(NEUTRALISED, '');

const cut = (text: string, separator: Separator, quoted: boolean): string[][] =>
  parse(text, {
    delimiter: separator,
    record_delimiter: '\n',
    quote: quoted ? '"' : false,
    relax_quotes: true,
    relax_column_count: true,
    skip_empty_lines: false,
  });

const numbered = (rows: readonly string[][]): SheetRecord[] =>
  rows.map((cells, index) => ({ row: index + 1, cells: cells.map(tidyCell) }));

function rowOfOpenQuote(text: string): number {
  const lines = text.split('\n');
  const last = lines.findLastIndex((line) => (line.split('"').length - 1) % 2 === 1);
  return Math.max(0, last) + 1;
}

/** Records of the whole text; line ends must be '\n'. A quotation mark that never closes is not an error. */
export function cutRecords(text: string, separator: Separator): CutText {
  try {
    return { records: numbered(cut(text, separator, true)), openQuoteRow: null };
  } catch {
    return { records: numbered(cut(text, separator, false)), openQuoteRow: rowOfOpenQuote(text) };
  }
}

export const isBlankRecord = (record: SheetRecord): boolean => record.cells.every((cell) => cell === '');
