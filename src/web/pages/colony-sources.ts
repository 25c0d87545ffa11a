/** What a colony start is reckoned from, and how likely a line is lost. */
import type { LengthUnit } from '../../../views/format.ts';
import type { LostLines } from '../../../views/pages/colony-answer.tsx';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import { preyNumbers } from '../../facts/own/prey-numbers.ts';
import type { Policy } from '../../husbandry/policy.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { allLostWithin } from '../../husbandry/supply/index.ts';
import { DAYS_PER_YEAR, inPercent } from '../../husbandry/units.ts';
import { numberWords } from './number-words.ts';
import { lineOf } from './source-line.ts';

/** Groups of the Book that a colony does not live by. */
const LEFT_OUT: readonly string[] = ['Size', 'Keeping'];

export function colonySources(species: PreySpecies, policy: Policy, unit: LengthUnit): readonly SourceLine[] {
  const { colonyWeeksMet, colonyYears, colonyChance } = policy;
  const numbers = preyNumbers(species).filter(({ about }) => !LEFT_OUT.includes(about));
  return [
    ...numbers.flatMap((number) =>
      number.sourced === null ? [] : [lineOf(number.what, number.sourced, numberWords(number, unit))],
    ),
    lineOf('A harvest lasts when met in', colonyWeeksMet, `${inPercent(colonyWeeksMet.value)} % of weeks`),
    lineOf('Followed for', colonyYears, `${colonyYears.value} years`),
    lineOf('With a chance of at least', colonyChance, `${inPercent(colonyChance.value)} %`),
    lineOf('A line is lost', policy.dieOffPerDay, `${inPercent(policy.dieOffPerDay.value)} % a day`),
    lineOf(
      'Losses shared by a room or an origin',
      policy.lineSharedShare,
      `${inPercent(policy.lineSharedShare.value)} %`,
    ),
  ];
}

/** Chances that everything is lost within a year: one line, two together, two that share neither room nor origin. */
export function lostWithinYear(policy: Policy): LostLines {
  const days = DAYS_PER_YEAR;
  const one = allLostWithin(policy, { lines: 1, days });
  return { one, together: allLostWithin(policy, { lines: 2, days }), apart: one ** 2 };
}
