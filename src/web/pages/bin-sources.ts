/** The numbers that weigh most on a bin's coming weeks, with their sources. */
import { percent, sentenceCase } from '../../../views/format.ts';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import type { Policy } from '../../husbandry/policy.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { lineOf } from './source-line.ts';

export function binSources(species: PreySpecies, policy: Policy): readonly SourceLine[] {
  const { spans, laying, crowding } = species;
  const days = spans.map(({ code, points }) =>
    lineOf(`${code}: days measured`, points, measured(points.value)),
  );
  const young = laying?.perFemaleDay;
  return [
    ...days,
    ...(young ? [lineOf('Young of a female a day', young, young.value.map(atTemp).join(', '))] : []),
    ...(crowding
      ? [
          lineOf(
            'Room',
            crowding.headsPerUnit,
            `${crowding.headsPerUnit.value} ${crowding.headsPerUnit.unit}`,
          ),
        ]
      : []),
    lineOf('Bins grow slower or faster', policy.speedLogSd, `by about ${percent(policy.speedLogSd.value)}`),
    lineOf('Bins die slower or faster', policy.hazardCv, `by about ${percent(policy.hazardCv.value)}`),
  ];
}

const measured = (points: readonly { readonly tempC: number; readonly days: number }[]): string =>
  points.length === 0
    ? 'none'
    : sentenceCase(
        points.map(({ tempC, days }) => `${Number(days.toPrecision(3))} at ${tempC} °C`).join(', '),
      );

const atTemp = ({ tempC, perDay }: { readonly tempC: number; readonly perDay: number }): string =>
  `${Number(perDay.toPrecision(3))} at ${tempC} °C`;
