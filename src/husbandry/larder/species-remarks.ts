/** What must be said beside a species' figures at some temperatures: where it stands still, and where nobody has measured. */
import {
  type DayTemp,
  type DevelopmentSpan,
  developmentOnDay,
  meanOfDay,
  type PreySpecies,
} from '../prey/index.ts';
import type { TempC } from '../units.ts';
import { plural } from '../words.ts';

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
  const told = species.spans.map((span) => ({
    still: standsStill(span, days),
    outside: outsideOf(span, days.temp),
  }));
  const outside = told.flatMap((span) => (span.still === null ? (span.outside ?? []) : []));
  return [...told.flatMap(({ still }) => still ?? []), ...outside];
}

/** Whoever is in a span: 'eggs', 'nymphs', 'larvae'. */
function young({ code }: DevelopmentSpan): string {
  if (code.includes(' to ')) return `the way from ${code}`;
  return code.endsWith('a') ? `${code}e` : plural(code);
}

function standsStill(span: DevelopmentSpan, { temp, weekMeanC }: Days): string | null {
  if (developmentOnDay(span, temp, weekMeanC) > 0) return null;
  const { hardStopC, lowerThresholdC, upperStopC } = span;
  const begins = `Nothing develops at ${spoken(temp)}: for ${young(span)}`;
  if (temp.minC >= upperStopC.value) return `${begins} it is too hot from ${upperStopC.value} °C.`;
  return hardStopC && temp.maxC > lowerThresholdC.value
    ? `${begins} a constant ${hardStopC.value} °C or less was too cold to grow up.`
    : `${begins} it must be warmer than ${lowerThresholdC.value} °C.`;
}

const range = (temps: readonly number[]): DayTemp => ({
  minC: Math.min(...temps),
  maxC: Math.max(...temps),
});

const spoken = ({ minC, maxC }: DayTemp): string => (minC === maxC ? `${minC} °C` : `${minC}–${maxC} °C`);

const isWithin = (temp: DayTemp, known: DayTemp): boolean =>
  known.minC <= temp.minC && temp.maxC <= known.maxC;

function outsideOf(span: DevelopmentSpan, temp: DayTemp): string | null {
  if (span.points.value.length === 0)
    return `For ${young(span)} the days are reckoned from degree-days at every temperature.`;
  const known = range(span.points.value.map((point) => point.tempC));
  if (isWithin(temp, known)) return null;
  return `${spoken(temp)} is outside what was measured for ${young(span)} (${spoken(known)}): the days are reckoned, not measured.`;
}

/** Of laying on such days. */
export function layingRemarks({ laying }: PreySpecies, { temp }: Days): readonly string[] {
  if (!laying) return ['Nothing is known here of its laying.'];
  const known = range(laying.perFemaleDay.value.map((point) => point.tempC));
  const mean = meanOfDay(temp);
  if (isWithin({ minC: mean, maxC: mean }, known)) return [];
  return [`${spoken(temp)} is outside what was measured of laying (${spoken(known)}).`];
}
