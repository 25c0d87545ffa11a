/** The numbers that weigh most on a bin's coming weeks, with their sources. */
import { type LengthUnit, percent } from '../../../views/format.ts';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import { preyNumbers } from '../../facts/own/prey-numbers.ts';
import type { Policy } from '../../husbandry/policy.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { numberWords } from './number-words.ts';
import { lineOf } from './source-line.ts';

/** Groups of the Book that say nothing of how many there will be. */
const LEFT_OUT: readonly string[] = ['Size'];

export const binSources = (
  species: PreySpecies,
  { speedLogSd, hazardCv }: Policy,
  unit: LengthUnit,
): readonly SourceLine[] => [
  ...preyNumbers(species).flatMap((number) =>
    number.sourced === null || LEFT_OUT.includes(number.about)
      ? []
      : [lineOf(number.what, number.sourced, numberWords(number, unit))],
  ),
  lineOf('Bins grow slower or faster', speedLogSd, `by about ${percent(speedLogSd.value)}`),
  lineOf('Bins die slower or faster', hazardCv, `by about ${percent(hazardCv.value)}`),
];
