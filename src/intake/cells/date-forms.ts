/** The forms a date cell can take, before its order of day and month is known. */
import { isBlank } from './blank.ts';
import { monthOf } from './month-names.ts';

export type DateForm =
  | { readonly kind: 'blank' }
  | { readonly kind: 'unclear' }
  /** Only the order of the numbers is open; c is null when no year was written. */
  | {
      readonly kind: 'numbers';
      readonly a: string;
      readonly b: string;
      readonly c: string | null;
      readonly mark: string;
    }
  | { readonly kind: 'plain'; readonly year: number | null; readonly month: number; readonly day: number }
  /** A spreadsheet's serial number. */
  | { readonly kind: 'serial'; readonly serial: number };

const TIME_OF_DAY = /[T ,]+\d{1,2}:\d{2}(:\d{2}([.,]\d+)?)?\s*([ap]m)?\s*(z|[+-]\d{2}:?\d{2})?$/i;
const WEEKDAY = /^(mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so)[a-z]*[.,]?\s+(?=\d|\p{L})/iu;
const ABOUT = /^(?:ca|about|approx|around|circa)\b\.?\s*|^[~≈]\s*/i;

const YEAR_FIRST = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})\.?$/;
const RUN_TOGETHER = /^(\d{4})(\d{2})(\d{2})$/;
const THREE = /^(\d{1,2})([-/.])\s?(\d{1,2})\2\s?(\d{2}|\d{4})$/;
const TWO = /^(\d{1,2})(\/)(\d{1,2})$|^(\d{1,2})(\.)(\d{1,2})\.$/;
const DAY_MONTH =
  /^(\d{1,2})(?:st|nd|rd|th|\.)?[\s-]*(?:of |de )?(\p{L}{3,})\.?[\s,-]*(?:de )?(\d{4}|'?\d{2})?$/u;
const MONTH_DAY = /^(\p{L}{3,})\.?[\s-]*(\d{1,2})(?:st|nd|rd|th)?(?:[\s,-]+(\d{4}|'?\d{2}))?$/u;
const NUMBER = /^\d+(?:[.,]\d+)?$/;

const LONGEST_TEXT = 60;
const CENTURY = 100;
const OLDEST_SHORT_YEAR = 90;

/** A year of two digits: 90 to 99 are of the last century, the rest of this one. */
export function fullYear(text: string): number {
  const year = Number(text.replace("'", ''));
  if (year >= CENTURY) return year;
  return year >= OLDEST_SHORT_YEAR ? year + 1900 : year + 2000;
}

function wordForm(text: string): DateForm {
  const [, dayFirst, monthAfter = '', yearA] = DAY_MONTH.exec(text) ?? [];
  const [, monthFirst = '', dayAfter, yearB] = MONTH_DAY.exec(text) ?? [];
  const month = monthOf(dayFirst === undefined ? monthFirst : monthAfter);
  const day = dayFirst ?? dayAfter;
  const year = yearA ?? yearB;
  if (month === null || day === undefined) return { kind: 'unclear' };
  return { kind: 'plain', year: year === undefined ? null : fullYear(year), month, day: Number(day) };
}

function numberForm(text: string): DateForm | null {
  const first = YEAR_FIRST.exec(text);
  if (first) return { kind: 'plain', year: Number(first[1]), month: Number(first[3]), day: Number(first[4]) };
  const run = RUN_TOGETHER.exec(text);
  if (run) return { kind: 'plain', year: Number(run[1]), month: Number(run[2]), day: Number(run[3]) };
  const [, a, mark = '', b = '', c] = THREE.exec(text) ?? [];
  if (a !== undefined && c !== undefined) return { kind: 'numbers', a, b, c, mark };
  const two = TWO.exec(text)?.filter((part) => part !== undefined);
  if (two) return { kind: 'numbers', a: two[1] ?? '', b: two[3] ?? '', c: null, mark: two[2] ?? '' };
  return NUMBER.test(text) ? { kind: 'serial', serial: Number(text.replace(',', '.')) } : null;
}

export function dateForm(text: string): DateForm {
  if (isBlank(text)) return { kind: 'blank' };
  if (text.length > LONGEST_TEXT) return { kind: 'unclear' };
  const clean = text.trim().replace(TIME_OF_DAY, '').replace(ABOUT, '').replace(WEEKDAY, '').trim();
  return numberForm(clean) ?? wordForm(clean);
}
