/** `demand`: what the collection will want, week by week. */

import { lengthText } from '../../views/format.ts';
import { loadSnapshot } from '../actions/index.ts';
import { civilDate } from '../husbandry/calendar.ts';
import { ok } from '../husbandry/result.ts';
import { type DemandForecast, forecastDemand, type GroupDemand } from '../husbandry/supply/index.ts';
import { answered, printJson, refused } from './answering.ts';
import { withDatabase } from './database.ts';
import { table } from './table.ts';
import { atMost, wholeNumber } from './values.ts';
import { optionValue, readWords } from './words.ts';
import { type Command, EXIT } from './world.ts';

const OPTIONS = { weeks: 'value', json: 'switch', db: 'value' } as const;
const USUAL_WEEKS = 4;
const MOST_WEEKS = 26;

export const demand: Command = async (given, world) => {
  const words = readWords(given, OPTIONS);
  if (!words.ok) return refused(world, words.problem);
  const rest = atMost(words.value, 0);
  const weeks = wholeNumber(words.value, 'weeks', { least: 1, most: MOST_WEEKS, of: 'weeks' });
  if (!rest.ok) return refused(world, rest.problem);
  if (!weeks.ok) return refused(world, weeks.problem);
  const opening = { db: optionValue(words.value, 'db'), missing: 'refuse' } as const;
  const forecast = await withDatabase(world, opening, async (context) =>
    ok(forecastDemand(await loadSnapshot(context), { weeks: weeks.value ?? USUAL_WEEKS })),
  );
  return answered(world, forecast, (found) => {
    if (words.value.switches.has('json')) printJson(world, { date: civilDate(found.day), ...found });
    else for (const line of demandLines(found)) world.out(line);
    return EXIT.good;
  });
};

function demandLines({ groups, weeks }: DemandForecast): readonly string[] {
  if (groups.length === 0) return ['Nobody to feed yet: add or import your animals.'];
  const heading = [
    'group',
    'heads',
    'ideal',
    ...Array.from({ length: weeks }, (_, week) => `week ${week + 1}`),
    'in all',
  ];
  return [
    'Prey items of the ideal size: the middle forecast, and in brackets what 9 of 10 weeks lie between.',
    '',
    ...table(heading, groups.filter(wantsAnything).map(row), new Set(heading.slice(1))),
  ];
}

/** Sizes that some may grow into are left out while hardly anybody does. */
const wantsAnything = ({ heads, cumulative }: GroupDemand): boolean =>
  heads > 0 || cumulative.some(({ high }) => high > 0);

const row = ({ name, heads, window, weeks, cumulative }: GroupDemand): readonly string[] => [
  name,
  `${heads}`,
  lengthText(window.idealMm, 'mm'),
  ...[...weeks, ...cumulative.slice(-1)].map(({ low, mid, high }) => `${mid} (${low}-${high})`),
];
