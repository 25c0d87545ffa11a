/** Whether a parcel can be sent on a day, and still be ordered for it; else a Problem that says which day would do. */
import { civilDate, type DayNumber, weekday } from '../husbandry/calendar.ts';
import { dispatchesOf, isSentOn, type Supplier } from '../husbandry/orders/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { listed } from '../husbandry/words.ts';

const LOOKED_AHEAD_DAYS = 90;
const WEEKDAYS = ['Mondays', 'Tuesdays', 'Wednesdays', 'Thursdays', 'Fridays', 'Saturdays', 'Sundays'];

/** Null where the parcel can be had. */
export function notSentOn(supplier: Supplier, sent: DayNumber, placed: DayNumber): Problem | null {
  const wrong = (code: string, sentence: string) =>
    problem(code, `${sentence}${nextOf(supplier, placed)}`, 'sentDay');
  const { name, cutOffDays } = supplier;
  const date = civilDate(sent);
  if (!isSentOn(supplier, sent)) return wrong('not-sent', `"${date}": ${whyNot(supplier, sent)}.`);
  const orderBy = sent - cutOffDays;
  return placed > orderBy
    ? wrong('order-by-past', `"${date}": “${name}” had to have the order by ${spokenDay(orderBy)}.`)
    : null;
}

function whyNot({ name, kind, dispatchWeekdays }: Supplier, sent: DayNumber): string {
  const sends = kind === 'shop' ? 'is open' : 'sends';
  if (dispatchWeekdays[weekday(sent)]) return `“${name}” is on holiday on that day`;
  const days = WEEKDAYS.filter((_, i) => dispatchWeekdays[i]);
  return `“${name}” ${sends} on ${days.length === 0 ? 'no day of the week' : listed(days)}`;
}

function nextOf(supplier: Supplier, placed: DayNumber): string {
  const [next] = dispatchesOf(supplier, { from: placed, to: placed + LOOKED_AHEAD_DAYS });
  return next === undefined ? '' : ` The next day that can be had is ${spokenDay(next.sent)}.`;
}
