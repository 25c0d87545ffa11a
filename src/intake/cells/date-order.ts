/** Whether day or month is written first, inferred from a whole column and never guessed. */
import { civilDate, type DayNumber, dayOf } from '../../husbandry/calendar.ts';
import { type DateForm, fullYear } from './date-forms.ts';

export const DATE_ORDERS = ['dmy', 'mdy', 'ymd'] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

export interface DayRead {
  readonly day: DayNumber;
  /** No year was written: the nearest such day in the past. */
  readonly yearAssumed: boolean;
}

const EPOCH_AS_SERIAL = 25_569;
const LEAP_CYCLE_YEARS = 8;

interface Written {
  readonly year: number | null;
  readonly month: number;
  readonly day: number;
}

function ordered(form: Extract<DateForm, { kind: 'numbers' }>, order: DateOrder): Written | null {
  const { a, b, c } = form;
  const [first, second] = [Number(a), Number(b)];
  if (order === 'ymd') return c?.length === 2 ? { year: fullYear(a), month: second, day: Number(c) } : null;
  const year = c === null ? null : fullYear(c);
  return order === 'dmy' ? { year, month: second, day: first } : { year, month: first, day: second };
}

/** The latest such day that is not after today. */
function nearestPast({ month, day }: Written, today: DayNumber): DayRead | null {
  const thisYear = Number(civilDate(today).slice(0, 4));
  for (let year = thisYear; year >= thisYear - LEAP_CYCLE_YEARS; year -= 1) {
    const found = dayOf(year, month, day);
    if (found.ok && found.value <= today) return { day: found.value, yearAssumed: true };
  }
  return null;
}

function onCalendar(written: Written | null, today: DayNumber): DayRead | null {
  if (!written) return null;
  if (written.year === null) return nearestPast(written, today);
  const found = dayOf(written.year, written.month, written.day);
  return found.ok ? { day: found.value, yearAssumed: false } : null;
}

/** The day a form stands for under an order, or null when there is none. Serials count from 1899-12-30. */
export function dayIn(form: DateForm, order: DateOrder, today: DayNumber): DayRead | null {
  if (form.kind === 'numbers') return onCalendar(ordered(form, order), today);
  if (form.kind === 'plain') return onCalendar(form, today);
  if (form.kind === 'serial') return { day: Math.floor(form.serial) - EPOCH_AS_SERIAL, yearAssumed: false };
  return null;
}

const sameDays = (forms: readonly DateForm[], today: DayNumber, orders: readonly DateOrder[]): boolean =>
  forms.every((form) => new Set(orders.map((order) => dayIn(form, order, today)?.day)).size === 1);

/** Orders under which every cell of the column is a day; a cell that is a day under none is left aside. */
export function ordersThatFit(forms: readonly DateForm[], today: DayNumber): readonly DateOrder[] {
  const open = forms.filter(
    (form) => form.kind === 'numbers' && DATE_ORDERS.some((order) => dayIn(form, order, today)),
  );
  if (open.length === 0) return [];
  const holds = (order: DateOrder): boolean => open.every((form) => dayIn(form, order, today) !== null);
  const yearMayLead = open.every((form) => form.kind === 'numbers' && form.mark === '-');
  const usual = DATE_ORDERS.filter((order) => (order !== 'ymd' || yearMayLead) && holds(order));
  const orders = usual.length > 0 ? usual : DATE_ORDERS.filter(holds);
  return sameDays(open, today, orders) ? orders.slice(0, 1) : orders;
}
