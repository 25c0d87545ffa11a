/** Days told in a refusal, as a keeper writes them. */
import { recordDay } from '../../../views/format.ts';
import { parseCivilDate } from '../../husbandry/calendar.ts';

/** What stands in quotes was typed, or is a name: it stays as it is. */
const QUOTED = /("[^"]*"|“[^”]*”)/;
const DATE = /\b\d{4}-\d{2}-\d{2}\b/g;

/** '"2026-11-19" is before it came (2026-11-20).' becomes '"2026-11-19" is before it came (20 Nov 2026).' */
export const daysTold = (sentence: string): string =>
  sentence
    .split(QUOTED)
    .map((part) => (QUOTED.test(part) ? part : part.replace(DATE, dayOr)))
    .join('');

function dayOr(date: string): string {
  const day = parseCivilDate(date);
  return day.ok ? recordDay(day.value) : date;
}
