/** What the reading of every list has in common: the file is opened, each row is set beside its record, the parts join. */
import { openQuestions, type Questions } from './asking.ts';
import { assembled } from './assembling.ts';
import type { DatesRead } from './cells/date-column.ts';
import { type LengthUnit, readUnit } from './cells/length.ts';
import type { ColumnWords } from './columns/words.ts';
import { verdictOn } from './comparing.ts';
import { datesOf } from './date-cells.ts';
import type { Existing } from './entries.ts';
import { openSheet, type SheetRow } from './file/sheet.ts';
import { type Identity, type Register, register } from './identity.ts';
import { labelsOnce, numberLikes } from './labels.ts';
import type { Named } from './names/name-book.ts';
import type { IntakeOptions } from './options.ts';
import { type Note, type Reading, type RowReading, unreadable } from './reading.ts';
import { wrongAnswers } from './resolving.ts';
import { NO_LONGER_KEPT } from './standing.ts';

interface Labelled {
  readonly label: string | null;
}

/** What the rows of one file share while they are read. */
export interface Listing<E> {
  readonly answers: Readonly<Record<string, string>>;
  readonly questions: Questions;
  readonly dates: DatesRead;
  /** Unit of sizes written without one. */
  readonly fileUnit: LengthUnit | null;
  readonly records: Register<Existing<E>>;
  readonly onceOnly: ReturnType<typeof labelsOnce>;
  readonly numbered: ReturnType<typeof numberLikes>;
}

interface ListOf<E, C extends string> {
  readonly table: readonly ColumnWords<C>[];
  /** The column without which nothing can be read; the columns that hold dates. */
  readonly needed: C;
  readonly dateColumns: readonly C[];
  /** Where the unit of sizes may stand in the heading. */
  readonly sizeColumn: C;
  readonly existing: readonly Existing<E>[];
  readonly identityOf: (entry: E) => Identity;
  /** What an answer may name. */
  readonly items: readonly Named[];
  readonly rowsOf: (row: SheetRow<C>, index: number, listing: Listing<E>) => readonly RowReading<E>[];
}

/** Reads bytes of a CSV file; never throws, writes nothing, and gives the same answer for the same file. */
export function readList<E extends Labelled, C extends string>(
  bytes: Uint8Array,
  options: IntakeOptions,
  list: ListOf<E, C>,
): Reading<E> {
  const { answers = {}, mapping = {} } = options;
  const opened = openSheet(bytes, { table: list.table, needed: list.needed, mapping });
  if (!opened.ok) return unreadable(opened.problem);
  const sheet = opened.value;
  if (sheet.problems.length > 0) return assembled(sheet);
  const dates = datesOf(sheet.rows, list.dateColumns, options);
  const sizeHeading = sheet.columns.find(({ column }) => column === list.sizeColumn)?.heading;
  const listing: Listing<E> = {
    answers,
    questions: openQuestions(),
    dates,
    fileUnit: readUnit(sizeHeading ?? '') ?? options.unit ?? null,
    records: register(list.existing, list.identityOf),
    onceOnly: labelsOnce(),
    numbered: numberLikes(),
  };
  const rows = sheet.rows.flatMap((row, index) => list.rowsOf(row, index, listing));
  return assembled(sheet, {
    rows,
    problems: [...dates.problems, ...wrongAnswers(answers, list.items)],
    asks: listing.questions.all(),
    remarks: dates.remarks,
    dateOrder: dates.order,
  });
}

interface Draft<E> {
  readonly entry: E;
  readonly row: number;
  readonly notes: readonly Note[];
}

interface Settling<E, D extends Draft<E>> {
  readonly written: string;
  readonly identityOf: (entry: E) => Identity;
  readonly merge: (before: E, draft: D) => { readonly after: E; readonly notes: readonly Note[] };
}

/** Sets a draft beside its record, if there is one. */
export function settled<E extends Labelled, D extends Draft<E>>(
  draft: D,
  listing: Listing<E>,
  { written, identityOf, merge }: Settling<E, D>,
): RowReading<E> {
  const { label, notes: labelNotes } = listing.onceOnly(draft.entry.label, draft.row);
  const entry: E = { ...draft.entry, label };
  const record = listing.records.claim(identityOf(entry));
  const notes = [...draft.notes, ...labelNotes];
  const about = { row: draft.row, written };
  if (!record) return verdictOn({ ...about, notes, record: null, after: entry });
  const before = entryOf<E>(record);
  const known = { code: record.code, before };
  if (record.gone)
    return verdictOn({ ...about, notes: [...notes, NO_LONGER_KEPT], record: known, after: before });
  const merged = merge(before, { ...draft, entry });
  return verdictOn({ ...about, notes: [...notes, ...merged.notes], record: known, after: merged.after });
}

/** The record as a row would write it, without what only a record has. */
function entryOf<E>(record: Existing<E>): E {
  const { code: _code, nth: _nth, gone: _gone, ...entry } = record;
  return entry as unknown as E;
}
