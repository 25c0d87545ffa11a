/** Growth in words: what was measured against what the kind is expected to do. */
import type { GrowthPoint, SizeSeen } from '../src/husbandry/appetite/index.ts';
import type { NumbersTable } from './charts/figure.tsx';
import { counted, type LengthUnit, lengthRange, lengthText, recordDay, sentenceCase } from './format.ts';

const DAYS_A_WEEK = 7;
const DAYS_A_MONTH = 30.44;
const IN_DAYS_BELOW = 14;
const IN_WEEKS_BELOW = 63;

const span = (days: number): string =>
  days < IN_DAYS_BELOW
    ? counted(days, 'day')
    : days < IN_WEEKS_BELOW
      ? counted(Math.round(days / DAYS_A_WEEK), 'week')
      : counted(Math.round(days / DAYS_A_MONTH), 'month');

/** The expected size nearest to a day. */
const expectedOn = (expected: readonly GrowthPoint[], day: number): GrowthPoint | undefined =>
  expected.toSorted((a, b) => Math.abs(a.day - day) - Math.abs(b.day - day))[0];

/** 'Grew from 28 to 47 mm in 7 months, as its kind is expected to'. */
export function growthFinding(
  sizes: readonly SizeSeen[],
  expected: readonly GrowthPoint[],
  unit: LengthUnit,
): string {
  const [first, last] = [sizes[0] as SizeSeen, sizes.at(-1) as SizeSeen];
  const grew = `From ${lengthText(first.gaugeMm, unit)} to ${lengthText(last.gaugeMm, unit)} in ${span(last.day - first.day)}`;
  const then = expectedOn(expected, last.day);
  if (then === undefined) return grew;
  if (last.gaugeMm < then.lowMm) return `${grew}: slower than its kind is expected to grow`;
  if (last.gaugeMm > then.highMm) return `${grew}: faster than its kind is expected to grow`;
  return `${grew}, as its kind is expected to`;
}

export interface GrowthTold {
  readonly sizes: readonly SizeSeen[];
  readonly expected: readonly GrowthPoint[];
  readonly gaugeWord: string;
  readonly unit: LengthUnit;
}

export const growthTable = ({ sizes, expected, gaugeWord, unit }: GrowthTold): NumbersTable => ({
  caption: 'Sizes measured, and what was to be expected from the first of them',
  head: ['Day', sentenceCase(gaugeWord), 'Expected'],
  rows: sizes.map(({ day, gaugeMm }, i) => {
    const then = expectedOn(expected, day);
    const range = i === 0 || then === undefined ? '–' : lengthRange(then.lowMm, then.highMm, unit);
    return [recordDay(day), lengthText(gaugeMm, unit), range];
  }),
});
