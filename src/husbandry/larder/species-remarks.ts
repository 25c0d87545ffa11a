/** What must be said beside a species' figures at a temperature: where it stands still, and where nobody has measured. */
import { type DevelopmentSpan, developmentOnDay, type PreySpecies } from '../prey/index.ts';
import type { TempC } from '../units.ts';

/** Sentences on the spans of development and on laying at a constant temperature. */
export function remarksAt(species: PreySpecies, tempC: TempC): readonly string[] {
  const still = species.spans.flatMap((span) => standsStill(span, tempC) ?? []);
  const outside = species.spans.flatMap((span) => outsideOf(span, tempC) ?? []);
  return [...still, ...outside, ...layingOutside(species, tempC)];
}

function standsStill(span: DevelopmentSpan, tempC: TempC): string | null {
  if (developmentOnDay(span, { minC: tempC, maxC: tempC }, tempC) > 0) return null;
  const { hardStopC, lowerThresholdC, upperStopC } = span;
  const begins = `Nothing develops at ${tempC} °C: the ${span.code} span`;
  if (tempC >= upperStopC.value) return `${begins} ends in the heat of ${upperStopC.value} °C.`;
  return hardStopC && tempC > lowerThresholdC.value
    ? `${begins} was not got through at a constant ${hardStopC.value} °C or less.`
    : `${begins} needs more than ${lowerThresholdC.value} °C.`;
}

const range = (temps: readonly number[]): { from: number; to: number } => ({
  from: Math.min(...temps),
  to: Math.max(...temps),
});

const inWords = ({ from, to }: { from: number; to: number }): string =>
  from === to ? `${from} °C` : `${from}-${to} °C`;

function outsideOf(span: DevelopmentSpan, tempC: TempC): string | null {
  if (span.points.value.length === 0)
    return `The days of the ${span.code} span are reckoned from its degree-days at every temperature.`;
  const known = range(span.points.value.map((point) => point.tempC));
  if (known.from <= tempC && tempC <= known.to) return null;
  return `${tempC} °C is outside what was measured for the ${span.code} span (${inWords(known)}): its days are reckoned, not measured.`;
}

function layingOutside({ laying }: PreySpecies, tempC: TempC): string[] {
  if (!laying) return ['Nothing is known here of its laying.'];
  const known = range(laying.perFemaleDay.value.map((point) => point.tempC));
  if (known.from <= tempC && tempC <= known.to) return [];
  return [`${tempC} °C is outside what was measured of its laying (${inWords(known)}).`];
}
