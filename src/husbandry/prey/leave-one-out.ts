/** How well the rate law foretells a published duration when that one is left out. */
import { valueAt } from '../../maths/sine-day.ts';
import type { TempC } from '../units.ts';
import { rateCurve } from './rate.ts';
import type { DevelopmentPoint, DevelopmentSpan, PreySpecies } from './species.ts';

export interface LeftOut {
  /** Code of the span of development. */
  readonly span: string;
  readonly tempC: TempC;
  /** Days published. */
  readonly days: number;
  /** Days by the law through the other points; Infinity where it stands still. */
  readonly foretoldDays: number;
  /** Foretold over published, less 1. */
  readonly error: number;
  /** The coldest or the warmest of the span: beyond the others, where the degree-day line or the way to the stop is followed. */
  readonly isEnd: boolean;
}

/**
 * Every published point of the spans with at least so many, foretold from the others: D = 1/r(T) with r the rate curve
 * without the point. Threshold and degree-days stay as published, though some were fitted to all of the points.
 */
export const leaveOneOut = ({ spans }: PreySpecies, leastPoints: number): readonly LeftOut[] =>
  spans
    .filter(({ points }) => points.value.length >= leastPoints)
    .flatMap((span) =>
      span.points.value
        .toSorted((a, b) => a.tempC - b.tempC)
        .map((point, i, { length }) => leftOut(span, point, i === 0 || i === length - 1)),
    );

function leftOut(span: DevelopmentSpan, { tempC, days }: DevelopmentPoint, isEnd: boolean): LeftOut {
  const others = span.points.value.filter((point) => point.tempC !== tempC);
  const foretoldDays = 1 / valueAt(rateCurve({ ...span, points: { ...span.points, value: others } }), tempC);
  return { span: span.code, tempC, days, foretoldDays, error: foretoldDays / days - 1, isEnd };
}
