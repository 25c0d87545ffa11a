/** Numbers of a prey species as lines with their sources. */
import type { LengthUnit } from '../../../views/format.ts';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import { preyNumbers } from '../../facts/own/prey-numbers.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { numberWords } from './number-words.ts';
import { lineOf } from './source-line.ts';

/** Those about these things, as the species' page groups them. */
export const speciesSources = (
  species: PreySpecies,
  about: readonly string[],
  unit: LengthUnit,
): readonly SourceLine[] =>
  preyNumbers(species).flatMap((number) =>
    number.sourced !== null && about.includes(number.about)
      ? [lineOf(number.what, number.sourced, numberWords(number, unit))]
      : [],
  );
