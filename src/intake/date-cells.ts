/** The dates of a file's rows, settled column by column. */
import type { DayNumber } from '../husbandry/calendar.ts';
import { type DateCell, type DatesRead, type DateWishes, readDates } from './cells/date-column.ts';
import type { SheetRow } from './file/sheet.ts';
import { quote } from './quoting.ts';
import { type Note, said, trouble } from './reading.ts';

export function datesOf<C extends string>(
  rows: readonly SheetRow<C>[],
  columns: readonly C[],
  wishes: DateWishes,
): DatesRead {
  return readDates(
    columns.map((column) => ({ column, cells: rows.map((row) => row.cell(column)) })),
    wishes,
  );
}

interface DayWritten {
  readonly day: DayNumber | null;
  /** The order of day and month must be chosen first. */
  readonly open: boolean;
}

/** The day of one cell; what is wrong or assumed is noted. */
export function dayWritten(cell: DateCell | undefined, text: string, notes: Note[]): DayWritten {
  if (cell?.kind === 'bad') notes.push(trouble(cell.problem));
  if (cell?.kind === 'day' && cell.yearAssumed)
    notes.push(
      said('year-assumed', `${quote(text)} has no year: the nearest such day in the past is taken.`),
    );
  return { day: cell?.kind === 'day' ? cell.day : null, open: cell?.kind === 'open' };
}
