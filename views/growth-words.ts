/** Growth in words: what was measured against what the kind is expected to do. */
import type { GrowthPoint, SizeSeen } from '../src/husbandry/appetite/index.ts';
import type { NumbersTable } from './charts/figure.tsx';
import { type LengthUnit, lengthRange, lengthText, recordDay, sentenceCase, spell } from './format.ts';

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
  const grew = `From ${lengthText(first.gaugeMm, unit)} to ${lengthText(last.gaugeMm, unit)} in ${spell(last.day - first.day)}`;
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
