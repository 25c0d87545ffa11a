/** Checks what came in against a shape; the first thing wrong comes back as a Problem. */
import type { z } from 'zod';
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';

export function parse<S extends z.ZodType>(schema: S, input: unknown): Result<z.output<S>> {
  const found = schema.safeParse(input);
  return found.success ? ok(found.data) : err(problemOf(found.error.issues[0]!));
}

function problemOf(issue: z.core.$ZodIssue): Problem {
  if (issue.code === 'unrecognized_keys')
    return problem('unknown-field', `"${issue.keys[0]}" is not a field known here.`, issue.keys[0]);
  const code = issue.code === 'custom' ? String(issue.params?.code ?? 'invalid') : 'invalid';
  return problem(code, issue.message, issue.path.join('.'));
}

/** Refuses a day that has not come yet; null when it has. */
export const afterToday = (day: DayNumber, today: DayNumber, field: string): Problem | null =>
  day > today
    ? problem(
        'after-today',
        `"${civilDate(day)}" is after today (${civilDate(today)}).${lateNight(day, today)}`,
        field,
      )
    : null;

/** Said of tomorrow: a keeper up after midnight may well mean it. */
const lateNight = (day: DayNumber, today: DayNumber): string =>
  day === today + 1 ? ' Until 04:00 it is still the evening before.' : '';

/** Refuses a range whose ends are swapped; null when they are in order. */
export const swapped = (from: number | null, to: number | null, field: string): Problem | null =>
  from !== null && to !== null && from > to
    ? problem('ends-swapped', `"${from} to ${to}" runs backwards; the lesser comes first.`, field)
    : null;
