/** What the keeper can say about a file beforehand or in answer to a question. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { DateOrder } from './cells/date-order.ts';
import type { LengthUnit } from './cells/length.ts';
import type { Mapping } from './columns/mapping.ts';

export interface IntakeOptions {
  readonly today: DayNumber;
  /** Our column -> the file's heading. */
  readonly mapping?: Mapping | undefined;
  readonly dates?: DateOrder | undefined;
  /** Unit of sizes written without one. */
  readonly unit?: LengthUnit | undefined;
  /** Text of a kind or prey -> its code; '' leaves such rows out. */
  readonly answers?: Readonly<Record<string, string>> | undefined;
}
