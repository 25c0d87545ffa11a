/** The numbers that weigh most on a bin's coming weeks, with their sources. */
import { type LengthUnit, percent } from '../../../views/format.ts';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import type { Policy } from '../../husbandry/policy.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { lineOf } from './source-line.ts';
import { speciesSources } from './species-sources.ts';

const ABOUT: readonly string[] = ['Growth', 'Survival', 'Room'];

export const binSources = (
  species: PreySpecies,
  { speedLogSd, hazardCv }: Policy,
  unit: LengthUnit,
): readonly SourceLine[] => [
  ...speciesSources(species, ABOUT, unit),
  lineOf('Bins grow slower or faster', speedLogSd, `by about ${percent(speedLogSd.value)}`),
  lineOf('Bins die slower or faster', hazardCv, `by about ${percent(hazardCv.value)}`),
];
