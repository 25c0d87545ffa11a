/** Development rate of a span by temperature, and how it adds up over a day. */
import { meanOverSineDay, type PiecewiseLinear } from '../../maths/sine-day.ts';
import type { TempC } from '../units.ts';
import type { DevelopmentPoint, DevelopmentSpan } from './species.ts';

/** One day's temperatures in a room: it swings between them as a sine. */
export interface DayTemp {
  readonly minC: TempC;
  readonly maxC: TempC;
}

/** Mean of the day. */
export const meanOfDay = (temp: DayTemp): TempC => (temp.minC + temp.maxC) / 2;

/**
 * Share of the span gone through per day at a constant temperature, as a curve of straight pieces:
 * r(T) = 0 at the lower threshold, 1/D at each published point (T, D), then slope 1/K [per degree-day] up to the
 * optimum, then straight to 0 at the upper stop. Between threshold and points it is the degree-day line
 * r = (T - T0)/K (Campbell et al. 1974, J. Appl. Ecol. 11:431-438) bent to meet what was measured.
 */
export function rateCurve(span: DevelopmentSpan): PiecewiseLinear {
  const points = [...span.points.value].sort((a, b) => a.tempC - b.tempC);
  const optimum = span.optimumC.value;
  const before = points.filter((point) => point.tempC <= optimum);
  const beyond = points.filter((point) => point.tempC > optimum);
  const knots = [[span.lowerThresholdC.value, 0] as const, ...before.map(rateAt)];
  const [lastTemp, lastRate] = knots[knots.length - 1] as readonly [number, number];
  if (lastTemp < optimum) knots.push([optimum, lastRate + (optimum - lastTemp) / span.degreeDays.value]);
  knots.push(...beyond.map(rateAt), [span.upperStopC.value, 0]);
  return { x: knots.map(([tempC]) => tempC), y: knots.map(([, rate]) => rate) };
}

const rateAt = ({ tempC, days }: DevelopmentPoint) => [tempC, 1 / days] as const;

/**
 * Share of the span gone through on one day. `weekMeanC`, the mean of seven days, decides the hard stop: it is an
 * observation at constant temperature and must not act on single cold hours.
 */
export function developmentOnDay(span: DevelopmentSpan, temp: DayTemp, weekMeanC: TempC): number {
  if (span.hardStopC && weekMeanC <= span.hardStopC.value) return 0;
  return meanOverSineDay(rateCurve(span), temp.minC, temp.maxC);
}
