/** Puts the parts of a reading together. */
import type { Problem } from '../husbandry/problems.ts';
import type { DateOrder } from './cells/date-order.ts';
import type { Sheet } from './file/sheet.ts';
import { type Ask, type Reading, type RowReading, tallyOf } from './reading.ts';

interface Parts<E> {
  readonly rows: readonly RowReading<E>[];
  readonly problems: readonly Problem[];
  readonly asks: readonly Ask[];
  readonly remarks: readonly string[];
  readonly dateOrder: DateOrder | null;
}

const NOTHING_READ: Parts<never> = { rows: [], problems: [], asks: [], remarks: [], dateOrder: null };

/** A reading; without `parts`, of a sheet whose columns must be put right first. */
export function assembled<E, C extends string>(sheet: Sheet<C>, parts: Parts<E> = NOTHING_READ): Reading<E> {
  const problems = [...sheet.problems, ...parts.problems];
  return {
    ready: problems.length === 0 && parts.asks.length === 0,
    rows: parts.rows,
    tally: tallyOf(parts.rows),
    problems,
    asks: parts.asks,
    columns: sheet.columns,
    headings: sheet.headings,
    unused: sheet.unused,
    remarks: [...sheet.remarks, ...parts.remarks],
    dateOrder: parts.dateOrder,
    separator: sheet.separator,
    encoding: sheet.encoding,
  };
}
