/**
 * Degree-days above 55 and below 90 F, horizontal cut-off. Zalom, Goodell, Wilson, Barnett and Bentley 1983:
 * Degree-Days: the calculation and use of heat units in pest management, UC DANR Leaflet 21373, table 7.
 * Tolerance 0.0061: the table is printed to two decimals.
 */
import { describe, expect, it } from 'vitest';
import { meanOverSineDay } from '../../src/maths/sine-day.ts';

const aboveLower = { x: [55, 90], y: [0, 35] };
const TOLERANCE = 0.0061;

/** Least and greatest of the day, degree-days by the single sine. */
const SINGLE = [
  [96, 110, 35],
  [45, 54, 0],
  [60, 80, 15],
  [50, 82, 11.85],
  [60, 100, 22.82],
  [50, 101, 18.95],
] as const;

/** Least, greatest, least of the next day, degree-days by the double sine: each half day has its own sine. */
const DOUBLE = [
  [96, 110, 91, 35],
  [91, 105, 96, 35],
  [45, 54, 38, 0],
  [38, 50, 45, 0],
  [60, 80, 75, 18.75],
  [75, 88, 60, 22.75],
  [50, 82, 45, 11.31],
  [45, 70, 50, 5.7],
  [60, 100, 75, 26.26],
  [75, 95, 60, 25.3],
  [50, 101, 48, 18.69],
  [48, 95, 50, 17.23],
] as const;

describe('degree-days of a sine day', () => {
  it.each(SINGLE)('from %d to %d F are %f by the single sine', (min, max, published) => {
    expect(Math.abs(meanOverSineDay(aboveLower, min, max) - published)).toBeLessThan(TOLERANCE);
  });

  it.each(DOUBLE)('from %d to %d and down to %d F are %f by the double sine', (min, max, next, published) => {
    const halves = [min, next].map((least) => meanOverSineDay(aboveLower, least, max) / 2);
    expect(Math.abs(halves[0]! + halves[1]! - published)).toBeLessThan(TOLERANCE);
  });
});
