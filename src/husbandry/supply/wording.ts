/** The verdict in about ten words, as a person would say it. */
import { civilDate, type DayNumber, weekday } from '../calendar.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { sentenceCase } from '../words.ts';
import type { GroupAnswer, Verdict } from './answer.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

/** Name of the day, as seen from today: tonight, tomorrow, Thursday; beyond a week "in 9 days". */
export function dayName(day: DayNumber, today: DayNumber): string {
  const ahead = day - today;
  if (ahead <= 0) return 'tonight';
  if (ahead === 1) return 'tomorrow';
  return ahead < DAYS_PER_WEEK ? `on ${WEEKDAYS[weekday(day)]}` : `in ${ahead} days`;
}

const SHORT_WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** A day as a keeper says it: 'Thu 26 Nov'. */
export function spokenDay(day: DayNumber): string {
  const [, month, date] = civilDate(day).split('-').map(Number) as [number, number, number];
  return `${SHORT_WEEKDAYS[weekday(day)]} ${date} ${MONTHS[month - 1]}`;
}

export interface Spoken {
  readonly verdict: Verdict;
  readonly today: DayNumber;
  readonly days: number;
  readonly untilDelivery: boolean;
  readonly groups: readonly GroupAnswer[];
  /** Whether nothing alive is there to be eaten. */
  readonly larderEmpty: boolean;
  /** Animals expected to pass their safe gap because nobody feeds. */
  readonly unfedDangers: number;
}

/** One sentence: who runs short and when, or that all is well, or that there is nobody to feed. */
export function headlineOf(spoken: Spoken): string {
  if (spoken.verdict === 'empty') return 'Nobody to feed yet: add or import your animals.';
  if (spoken.verdict === 'lasts') return lasting(spoken);
  if (spoken.larderEmpty) return 'The larder is empty: nobody can be fed.';
  const short = spoken.groups
    .filter(({ verdict, dangers }) => verdict !== 'lasts' || dangers > 0)
    .sort((a, b) => b.dangers - a.dangers || b.missedMeals - a.missedMeals);
  const worst = short[0];
  const state = spoken.verdict === 'tight' ? 'Tight' : 'Runs short';
  if (!worst) return `${state}: a few meals could be missed in the room as a whole.`;
  const when = dayName(spoken.today + (worst.runOut.day?.mid ?? 0), spoken.today);
  const more = short.filter(({ verdict }) => verdict !== 'lasts').length - 1;
  const rest = more > 0 ? `; ${others(more)}` : '; the rest lasts';
  const who = whoOf(worst, spoken.groups);
  if (worst.verdict === 'runs short') return `${sentenceCase(who)} run short ${when}${rest}.`;
  if (worst.verdict === 'tight') return `${state}: ${who} could run short ${when}${rest}.`;
  return `${state}: ${who} could go hungry too long${rest}.`;
}

/** A group's name; where others of that name last, which of them it is by the length of its prey. */
function whoOf({ name, window, key }: GroupAnswer, groups: readonly GroupAnswer[]): string {
  const lasting = groups.filter(
    (other) => other.key !== key && other.name === name && other.heads > 0 && other.verdict === 'lasts',
  );
  if (lasting.length === 0) return name;
  if (lasting.every((other) => other.window.maxMm > window.maxMm)) return `the smallest ${name}`;
  return lasting.every((other) => other.window.maxMm < window.maxMm) ? `the largest ${name}` : `some ${name}`;
}

function lasting(spoken: Spoken): string {
  const { unfedDangers } = spoken;
  if (unfedDangers < 1) return `${lastsUntil(spoken)}.`;
  const many = Math.round(unfedDangers);
  const who = many === 1 ? '1 animal goes' : `${many} animals go`;
  return `${lastsUntil(spoken)}, but ${who} too long without food.`;
}

function lastsUntil({ today, days, untilDelivery }: Spoken): string {
  if (untilDelivery) return `The feeders last until the delivery ${dayName(today + days - 1, today)}`;
  return days === DAYS_PER_WEEK ? 'The feeders last the week' : `The feeders last the next ${days} days`;
}

const others = (n: number): string => (n === 1 ? 'so does one more group' : `so do ${n} more groups`);
