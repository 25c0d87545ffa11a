/** Reads the value of an option: a number within bounds, a day not too far off, one of a few words. */
import { type DayNumber, parseCivilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { DAYS_PER_YEAR } from '../husbandry/units.ts';
import { optionValue, type Words } from './words.ts';

export interface Bounds {
  readonly least: number;
  readonly most: number;
  /** What is counted, for the sentence. */
  readonly of: string;
}

/** A whole number within bounds; undefined when the option is not said. */
export function wholeNumber(
  words: Words,
  name: string,
  { least, most, of }: Bounds,
): Result<number | undefined> {
  const text = optionValue(words, name);
  if (text === undefined) return ok(undefined);
  const number = Number(text);
  if (/^\d+$/.test(text) && number >= least && number <= most) return ok(number);
  return err(
    problem('bad-value', `--${name} is "${text}"; give a whole number of ${of} from ${least} to ${most}.`),
  );
}

const MOST_YEARS = 5;

/** A civil day within five years of today; undefined when the option is not said. */
export function nearDay(words: Words, name: string, today: DayNumber): Result<DayNumber | undefined> {
  const text = optionValue(words, name);
  if (text === undefined) return ok(undefined);
  const day = parseCivilDate(text);
  if (!day.ok) return err(problem('bad-value', `--${name}: ${day.problem.sentence}`));
  if (Math.abs(day.value - today) <= MOST_YEARS * DAYS_PER_YEAR) return day;
  return err(problem('bad-value', `--${name} is "${text}"; give a day within ${MOST_YEARS} years of today.`));
}

/** One of a few words; undefined when the option is not said. */
export function oneOf<T extends string>(
  words: Words,
  name: string,
  choices: readonly T[],
): Result<T | undefined> {
  const text = optionValue(words, name);
  const chosen = choices.find((choice) => choice === text);
  if (text === undefined || chosen !== undefined) return ok(chosen);
  return err(problem('bad-value', `--${name} is "${text}"; give one of ${choices.join(', ')}.`));
}

/** Pairs written as left=right. */
export function pairs(words: Words, name: string): Result<Readonly<Record<string, string>>> {
  const found: Record<string, string> = {};
  for (const text of words.values.get(name) ?? []) {
    const at = text.indexOf('=');
    if (at < 1) return err(problem('bad-value', `--${name} is "${text}"; write it as this=that.`));
    found[text.slice(0, at)] = text.slice(at + 1);
  }
  return ok(found);
}

/** Refuses words that belong to no option, beyond so many. */
export function atMost({ rest }: Words, most: number): Result<readonly string[]> {
  const over = rest[most];
  return over === undefined
    ? ok(rest)
    : err(problem('bad-word', `"${over}" is not understood here: put several words in quotation marks.`));
}
