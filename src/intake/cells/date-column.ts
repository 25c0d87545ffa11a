/** Reads whole columns of dates: the order is settled once, then each cell is a day, nothing or a Problem. */
import { civilDate, type DayNumber, dayOf } from '../../husbandry/calendar.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { either, quote } from '../quoting.ts';
import { type DateForm, dateForm } from './date-forms.ts';
import { type DateOrder, type DayRead, dayIn, ordersThatFit } from './date-order.ts';

interface DateColumn {
  readonly column: string;
  readonly cells: readonly string[];
}

export type DateCell =
  | { readonly kind: 'none' }
  | ({ readonly kind: 'day' } & DayRead)
  | { readonly kind: 'bad'; readonly problem: Problem }
  /** Waits until the keeper has said which order the column has. */
  | { readonly kind: 'open' };

export interface DatesRead {
  /** Cells in order, by column. */
  readonly columns: ReadonlyMap<string, readonly DateCell[]>;
  readonly order: DateOrder | null;
  readonly problems: readonly Problem[];
  readonly remarks: readonly string[];
}

export interface DateWishes {
  readonly today: DayNumber;
  /** The order the keeper chose. */
  readonly dates?: DateOrder | undefined;
}

const FIRST_YEAR = 1990;
const SERIALS: readonly [number, number] = [20_000, 80_000];
const CHOOSE = 'Choose the order.';
const ORDER_WORDS: Readonly<Record<DateOrder, string>> = {
  dmy: 'day first',
  mdy: 'month first',
  ymd: 'year first',
};

const isSerial = (form: DateForm): boolean =>
  form.kind === 'serial' && form.serial >= SERIALS[0] && form.serial <= SERIALS[1];

/** Serial numbers count as dates only where the whole column is such. */
const allSerials = (forms: readonly DateForm[]): boolean =>
  forms.every((form) => form.kind === 'blank' || isSerial(form));

function readingOf(text: string, form: DateForm, today: DayNumber, orders: readonly DateOrder[]): string {
  const days = orders.map((order) => dayIn(form, order, today)?.day);
  return `${quote(text)} is ${either(days.map((day) => (day === undefined ? 'no day' : civilDate(day))))}`;
}

function openOrder({ column, cells }: DateColumn, orders: readonly DateOrder[], today: DayNumber): Problem {
  const telling = cells.find((cell) => {
    const days = orders.map((order) => dayIn(dateForm(cell), order, today)?.day);
    return dateForm(cell).kind === 'numbers' && new Set(days).size > 1;
  });
  const example = telling === undefined ? '' : ` ${readingOf(telling, dateForm(telling), today, orders)}.`;
  const ways = either(orders.map((order) => ORDER_WORDS[order]));
  return problem('dates-ambiguous', `The dates in "${column}" could be ${ways}:${example} ${CHOOSE}`, column);
}

function mixedOrder({ column, cells }: DateColumn, today: DayNumber): Problem {
  const only = (order: DateOrder, other: DateOrder): string =>
    cells.find((cell) => {
      const form = dateForm(cell);
      return form.kind === 'numbers' && dayIn(form, order, today) && !dayIn(form, other, today);
    }) ?? '';
  return problem(
    'dates-mixed',
    `The dates in "${column}" do not share one order: ${quote(only('dmy', 'mdy'))} and ${quote(only('mdy', 'dmy'))}. Write them all like 2026-03-21, or choose the order; a date that does not fit it is left empty.`,
    column,
  );
}

const notADate = (text: string, column: string): Problem =>
  problem('not-a-date', `${quote(text)} is not a date and is left empty; write it like 2026-03-21.`, column);

function outOfTime(text: string, day: DayNumber, column: string, today: DayNumber): Problem | null {
  if (day > today)
    return problem(
      'date-in-future',
      `${quote(text)} (${civilDate(day)}) is in the future; write the day it happened, at the latest ${civilDate(today)}.`,
      column,
    );
  const first = dayOf(FIRST_YEAR, 1, 1);
  if (first.ok && day < first.value)
    return problem(
      'date-too-old',
      `${quote(text)} (${civilDate(day)}) is before ${FIRST_YEAR}; write the day it happened, such as ${civilDate(today)}.`,
      column,
    );
  return null;
}

interface Settled {
  readonly column: DateColumn;
  readonly forms: readonly DateForm[];
  readonly orders: readonly DateOrder[];
}

function cellsOf({ column, forms }: Settled, order: DateOrder | null, today: DayNumber): DateCell[] {
  const serials = allSerials(forms);
  return forms.map((form, index): DateCell => {
    const text = column.cells[index] ?? '';
    if (form.kind === 'blank') return { kind: 'none' };
    if (form.kind === 'numbers' && order === null) return { kind: 'open' };
    const read = form.kind === 'serial' && !serials ? null : dayIn(form, order ?? 'dmy', today);
    const trouble = read ? outOfTime(text, read.day, column.column, today) : notADate(text, column.column);
    if (trouble || !read) return { kind: 'bad', problem: trouble ?? notADate(text, column.column) };
    return { kind: 'day', ...read };
  });
}

const settled = (column: DateColumn, today: DayNumber): Settled => {
  const forms = column.cells.map(dateForm);
  return { column, forms, orders: ordersThatFit(forms, today) };
};

const needsOrder = ({ forms, orders }: Settled, today: DayNumber): boolean =>
  orders.length > 0 ||
  forms.some((form) => form.kind === 'numbers' && (dayIn(form, 'dmy', today) || dayIn(form, 'mdy', today)));

/** Reads the date columns of one file. One column's proven order also serves the file's other columns, and is said. */
export function readDates(columns: readonly DateColumn[], { today, dates }: DateWishes): DatesRead {
  const all = columns.map((column) => settled(column, today));
  const proven = new Set(all.flatMap(({ orders }) => (orders.length === 1 ? orders : [])));
  const shared = proven.size === 1 ? [...proven][0] : undefined;
  const problems: Problem[] = [];
  const remarks: string[] = [];
  const cells = all.map((one) => {
    const [first, second] = one.orders;
    const lent = second !== undefined && shared !== undefined && one.orders.includes(shared) ? shared : null;
    const order = dates ?? (second === undefined ? (first ?? null) : lent);
    if (order === null && needsOrder(one, today))
      problems.push(second ? openOrder(one.column, one.orders, today) : mixedOrder(one.column, today));
    if (dates === undefined && lent)
      remarks.push(
        `Dates in "${one.column.column}" are read ${ORDER_WORDS[lent]}, as the file's other dates are.`,
      );
    return [one.column.column, cellsOf(one, order, today)] as const;
  });
  return { columns: new Map(cells), order: dates ?? shared ?? null, problems, remarks };
}
