/** What must be said beside a species' figures at some temperatures: where it stands still, and where nobody has measured. */
import {
  type DayTemp,
  type DevelopmentSpan,
  developmentOnDay,
  meanOfDay,
  type PreySpecies,
} from '../prey/index.ts';
import type { TempC } from '../units.ts';

/** Days alike: their least and greatest temperature, and the mean of a week of them, for hard stops. */
interface Days {
  readonly temp: DayTemp;
  readonly weekMeanC: TempC;
}

/** Sentences on the spans of development and on laying at a constant temperature. */
export function remarksAt(species: PreySpecies, tempC: TempC): readonly string[] {
  const days: Days = { temp: { minC: tempC, maxC: tempC }, weekMeanC: tempC };
  return [...growthRemarks(species, days), ...layingRemarks(species, days)];
}

/** Of growing on days that are warmer than their nights: a figure is reckoned beyond what was measured only to its stop. */
export function growthRemarks(species: PreySpecies, days: Days): readonly string[] {
  const still = species.spans.flatMap((span) => standsStill(span, days) ?? []);
  return [...still, ...species.spans.flatMap((span) => outsideOf(span, days.temp) ?? [])];
}

function standsStill(span: DevelopmentSpan, { temp, weekMeanC }: Days): string | null {
  if (developmentOnDay(span, temp, weekMeanC) > 0) return null;
  const { hardStopC, lowerThresholdC, upperStopC } = span;
  const begins = `Nothing develops at ${spoken(temp)}: the ${span.code} span`;
  if (temp.minC >= upperStopC.value) return `${begins} ends in the heat of ${upperStopC.value} °C.`;
  return hardStopC && temp.maxC > lowerThresholdC.value
    ? `${begins} was not got through at a constant ${hardStopC.value} °C or less.`
    : `${begins} needs more than ${lowerThresholdC.value} °C.`;
}

const range = (temps: readonly number[]): DayTemp => ({
  minC: Math.min(...temps),
  maxC: Math.max(...temps),
});

const spoken = ({ minC, maxC }: DayTemp): string => (minC === maxC ? `${minC} °C` : `${minC}-${maxC} °C`);

const isWithin = (temp: DayTemp, known: DayTemp): boolean =>
  known.minC <= temp.minC && temp.maxC <= known.maxC;

function outsideOf(span: DevelopmentSpan, temp: DayTemp): string | null {
  if (span.points.value.length === 0)
    return `The days of the ${span.code} span are reckoned from its degree-days at every temperature.`;
  const known = range(span.points.value.map((point) => point.tempC));
  if (isWithin(temp, known)) return null;
  return `${spoken(temp)} is outside what was measured for the ${span.code} span (${spoken(known)}): its days are reckoned, not measured.`;
}

/** Of laying on such days. */
export function layingRemarks({ laying }: PreySpecies, { temp }: Days): readonly string[] {
  if (!laying) return ['Nothing is known here of its laying.'];
  const known = range(laying.perFemaleDay.value.map((point) => point.tempC));
  const mean = meanOfDay(temp);
  if (isWithin({ minC: mean, maxC: mean }, known)) return [];
  return [`${spoken(temp)} is outside what was measured of its laying (${spoken(known)}).`];
}
