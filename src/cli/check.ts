/** `check`: the Sunday question, asked on the command line. */

import { civilDate } from '../husbandry/calendar.ts';
import { ok, type Result } from '../husbandry/result.ts';
import type { Verdict } from '../husbandry/supply/index.ts';
import { answered, printJson, refused } from './answering.ts';
import { checkLines } from './check-text.ts';
import { type CheckAsked, checked } from './checked.ts';
import { todayOf, withDatabase } from './database.ts';
import { atMost, nearDay, wholeNumber } from './values.ts';
import { optionValue, readWords, type Words } from './words.ts';
import { type Command, EXIT } from './world.ts';

const OPTIONS = { date: 'value', days: 'value', seed: 'value', json: 'switch', db: 'value' } as const;
const MOST_DAYS = 90;
const MOST_SEED = 4_294_967_295;

/** An empty room has nobody who could go hungry: that is no trouble. */
const EXIT_OF: Readonly<Record<Verdict, number>> = {
  lasts: EXIT.good,
  empty: EXIT.good,
  tight: EXIT.tight,
  'runs short': EXIT.runsShort,
};

export const check: Command = async (given, world) => {
  const words = readWords(given, OPTIONS);
  if (!words.ok) return refused(world, words.problem);
  const today = todayOf(world);
  if (!today.ok) return refused(world, today.problem);
  const asked = askedIn(words.value, today.value);
  if (!asked.ok) return refused(world, asked.problem);
  const opening = { db: optionValue(words.value, 'db'), missing: 'refuse' } as const;
  const answer = await withDatabase(world, opening, async (context) =>
    ok(await checked(context, asked.value)),
  );
  return answered(world, answer, ({ cover, steps }) => {
    const exit = EXIT_OF[cover.verdict];
    if (words.value.switches.has('json'))
      printJson(world, { date: civilDate(cover.day), exit, ...cover, plan: steps });
    else for (const line of checkLines({ cover, steps })) world.out(line);
    return exit;
  });
};

function askedIn(words: Words, today: number): Result<CheckAsked> {
  const rest = atMost(words, 0);
  const day = nearDay(words, 'date', today);
  const days = wholeNumber(words, 'days', { least: 1, most: MOST_DAYS, of: 'days' });
  const seed = wholeNumber(words, 'seed', { least: 0, most: MOST_SEED, of: 'a seed' });
  if (!rest.ok) return rest;
  if (!day.ok) return day;
  if (!days.ok) return days;
  return seed.ok ? ok({ day: day.value, days: days.value, seed: seed.value }) : seed;
}
