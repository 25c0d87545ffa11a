/** Opens a file as a sheet: rows below a heading, with our columns found among its own. */
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { type ColumnMatch, knownHeadings, type Mapping, mapColumns } from '../columns/mapping.ts';
import type { ColumnWords } from '../columns/words.ts';
import { either, quote } from '../quoting.ts';
import { decodeBytes, type Encoding } from './bytes.ts';
import { cutRecords, isBlankRecord, type Separator, type SheetRecord } from './records.ts';
import { findSeparator, type HeadingScore } from './separator.ts';

/** One row of the file, read by our column names. */
export interface SheetRow<C extends string> {
  readonly row: number;
  /** The cell of a column, '' when the row or the file has none. */
  readonly cell: (column: C) => string;
}

export interface Sheet<C extends string> {
  readonly rows: readonly SheetRow<C>[];
  readonly columns: readonly ColumnMatch<C>[];
  readonly headings: readonly string[];
  readonly unused: readonly string[];
  readonly separator: Separator;
  readonly encoding: Encoding;
  /** What was found about the file as a whole, in sentences. */
  readonly remarks: readonly string[];
  readonly problems: readonly Problem[];
}

const HEADING_WITHIN_RECORDS = 15;

/** The record with most known headings; without any, the first that has two cells filled. */
function headingOf(records: readonly SheetRecord[], known: HeadingScore): SheetRecord | undefined {
  const first = records.filter((record) => !isBlankRecord(record)).slice(0, HEADING_WITHIN_RECORDS);
  const best = Math.max(0, ...first.map(({ cells }) => known(cells)));
  if (best > 0) return first.find(({ cells }) => known(cells) === best);
  return first.find(({ cells }) => cells.filter((cell) => cell !== '').length > 1) ?? first[0];
}

function rowsBelow<C extends string>(
  heading: SheetRecord,
  records: readonly SheetRecord[],
  columns: readonly ColumnMatch<C>[],
): SheetRow<C>[] {
  const places = new Map(columns.map(({ column, index }) => [column, index]));
  return records
    .filter((record) => record.row > heading.row && !isBlankRecord(record))
    .map(({ row, cells }) => ({ row, cell: (column: C) => cells[places.get(column) ?? -1] ?? '' }));
}

function remarksOn(heading: SheetRecord, longest: number, openQuoteRow: number | null): string[] {
  const remarks: string[] = [];
  if (heading.row > 1) remarks.push(`The headings stand in row ${heading.row}; what is above was left out.`);
  if (longest > heading.cells.length)
    remarks.push(
      `Some rows have ${longest} cells under ${heading.cells.length} headings; the cells beyond were left out.`,
    );
  if (openQuoteRow !== null)
    remarks.push(
      `A quotation mark in row ${openQuoteRow} never closes; such marks were read as plain characters.`,
    );
  return remarks;
}

const noRows = (headings: readonly string[]): Problem =>
  problem(
    'no-rows',
    `The file has 0 rows below its headings (${headings.map(quote).join(', ')}). Add a row for each entry.`,
  );

const noColumn = (needed: string, headings: readonly string[]): Problem =>
  problem(
    'column-missing',
    `No column was found for "${needed}". Say which it is: ${either(headings.filter(Boolean).map(quote))}.`,
    needed,
  );

interface SheetWants<C extends string> {
  readonly table: readonly ColumnWords<C>[];
  /** The column without which nothing can be read. */
  readonly needed: C;
  readonly mapping: Mapping;
}

/** Reads bytes as a sheet. A file that is no text is a Problem; trouble with columns stands in `problems`. */
export function openSheet<C extends string>(bytes: Uint8Array, wants: SheetWants<C>): Result<Sheet<C>> {
  const decoded = decodeBytes(bytes);
  if (!decoded.ok) return decoded;
  const known = knownHeadings(wants.table, wants.mapping);
  const { separator, body } = findSeparator(decoded.value.text.replace(/\r\n?/g, '\n'), known);
  const { records, openQuoteRow } = cutRecords(body, separator);
  const heading = headingOf(records, known);
  if (!heading) return err(noRows([]));
  const { matches, unused, problems } = mapColumns(heading.cells, wants.table, wants.mapping);
  const rows = rowsBelow(heading, records, matches);
  const longest = records.reduce(
    (most, { row, cells }) => (row > heading.row ? Math.max(most, widthOf(cells)) : most),
    0,
  );
  const missing = matches.some(({ column }) => column === wants.needed)
    ? []
    : [noColumn(wants.needed, heading.cells)];
  const empty = rows.length === 0 ? [noRows(heading.cells)] : [];
  return ok({
    rows,
    columns: matches,
    headings: heading.cells,
    unused,
    separator,
    encoding: decoded.value.encoding,
    remarks: remarksOn(heading, longest, openQuoteRow),
    problems: [...problems, ...missing, ...empty],
  });
}

/** Cells of a row up to the last that is filled. */
const widthOf = (cells: readonly string[]): number => cells.findLastIndex((cell) => cell !== '') + 1;
