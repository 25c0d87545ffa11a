/** Reads a file of measured temperatures, as a logger or a spreadsheet writes it, into the least and greatest of each day. */
import type { DayNumber } from '../../husbandry/calendar.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { TempSeries } from '../../husbandry/snapshot.ts';
import { type DateWishes, readDates } from '../cells/date-column.ts';
import { readTemperature, type TemperatureUnit } from '../cells/temperature.ts';
import type { ColumnMatch } from '../columns/mapping.ts';
import { openSheet, type Sheet, type SheetRow } from '../file/sheet.ts';
import { holdsPhrase, plainWords } from '../names/plain.ts';
import { seriesOf, type TempReading } from './days.ts';
import { TEMPERATURE_WORDS, type TemperatureColumn } from './words.ts';

export interface TemperaturesRead {
  readonly series: TempSeries;
  /** Rows that were read, and those that were left out because something in them is no date or no temperature. */
  readonly rows: number;
  readonly leftOut: number;
  /** What was wrong with the first row left out. */
  readonly why: Problem | null;
}

/** The series of a file, or what is wrong with the file as a whole. */
export function readTemperatures(bytes: Uint8Array, wishes: DateWishes): Result<TemperaturesRead> {
  const opened = openSheet(bytes, { table: TEMPERATURE_WORDS, needed: 'when', mapping: {} });
  if (!opened.ok) return opened;
  const sheet = opened.value;
  const wrong = noDate(sheet) ?? sheet.problems[0] ?? noTemperature(sheet);
  if (wrong) return err(wrong);
  const heading = sheet.columns.find(({ column }) => column === 'when')?.heading ?? '';
  const dates = readDates([{ column: heading, cells: sheet.rows.map(({ cell }) => cell('when')) }], wishes);
  if (dates.problems[0]) return err(dates.problems[0]);
  const days = dates.columns.get(heading) ?? [];
  const read = sheet.rows.map((row, at) => {
    const cell = days[at];
    if (cell?.kind === 'bad') return err(cell.problem);
    return cell?.kind === 'day' ? readingOf(sheet, row, cell.day) : err(noDay(row));
  });
  return gathered(read);
}

function gathered(read: readonly Result<TempReading>[]): Result<TemperaturesRead> {
  const good = read.flatMap((each) => (each.ok ? [each.value] : []));
  const first = read.find((each) => !each.ok);
  const why = first === undefined || first.ok ? null : first.problem;
  if (good.length === 0)
    return err(why ?? problem('no-rows', 'The file has no row with a day and a temperature.'));
  return ok({ series: seriesOf(good), rows: good.length, leftOut: read.length - good.length, why });
}

const has = ({ columns }: Pick<Sheet<TemperatureColumn>, 'columns'>, wanted: TemperatureColumn) =>
  columns.some(({ column }) => column === wanted);

const among = ({ headings }: Sheet<TemperatureColumn>) => headings.map((each) => `"${each}"`).join(', ');

function noDate(sheet: Sheet<TemperatureColumn>): Problem | null {
  if (has(sheet, 'when')) return null;
  const sentence = `No column was found for the date among ${among(sheet)}. Call it "date".`;
  return problem('column-missing', sentence, 'when');
}

function noTemperature(sheet: Sheet<TemperatureColumn>): Problem | null {
  if (has(sheet, 'temperature') || (has(sheet, 'least') && has(sheet, 'greatest'))) return null;
  return problem(
    'column-missing',
    `No column was found for the temperature among ${among(sheet)}. Call it "temperature", or "min" and "max".`,
  );
}

const noDay = ({ row }: SheetRow<TemperatureColumn>): Problem =>
  problem('no-day', `Row ${row} has no date; write it like 2026-03-21.`);

/** One row: its least and greatest where both are given, else its one temperature. */
function readingOf(
  sheet: Sheet<TemperatureColumn>,
  { row, cell }: SheetRow<TemperatureColumn>,
  day: DayNumber,
): Result<TempReading> {
  const both = has(sheet, 'least') && has(sheet, 'greatest');
  const read = (column: TemperatureColumn): Result<number> => {
    const found = readTemperature(cell(column), unitOf(sheet.columns, column));
    return found.ok ? found : err({ ...found.problem, row });
  };
  const least = read(both ? 'least' : 'temperature');
  const most = both ? read('greatest') : least;
  if (!least.ok) return least;
  if (!most.ok) return most;
  return ok({ day, minC: Math.min(least.value, most.value), maxC: Math.max(least.value, most.value) });
}

/** Celsius, unless the heading names Fahrenheit; a unit beside the number counts before either. */
function unitOf(
  columns: readonly ColumnMatch<TemperatureColumn>[],
  wanted: TemperatureColumn,
): TemperatureUnit {
  const heading = plainWords(columns.find(({ column }) => column === wanted)?.heading ?? '');
  return ['f', 'degf', 'fahrenheit', 'deg f'].some((word) => holdsPhrase(heading, word)) ? 'F' : 'C';
}
