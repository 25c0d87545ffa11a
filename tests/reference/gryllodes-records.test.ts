/**
 * The table of the banded cricket against the individual records it was reckoned from: Kong, Vadboncoeur, Bertram
 * and MacMillan 2025, doi:10.5281/zenodo.14681072, CC-BY 4.0 (see data/README.md).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gryllodesSigillatus } from '../../src/facts/prey/gryllodes-sigillatus.ts';

interface RecordOfOne {
  readonly tempC: number;
  /** Days from hatch to adult and from adult to death; null when it never matured. */
  readonly immatureDays: number | null;
  readonly adultDays: number | null;
}

const dayOf = (text: string): number => {
  const [day, month, year] = text.split('/').map(Number);
  return Date.UTC(year!, month! - 1, day!) / 86_400_000;
};

const records: readonly RecordOfOne[] = readFileSync(
  new URL('data/gryllodes-survival.csv', import.meta.url),
  'utf8',
)
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .map((line) => line.split(','))
  .filter((cells) => cells[9] === '0')
  .map((cells) => {
    const [hatched, ended, matured] = [cells[4]!, cells[5]!, cells[8]!];
    return matured === ''
      ? { tempC: Number(cells[1]), immatureDays: null, adultDays: null }
      : {
          tempC: Number(cells[1]),
          immatureDays: dayOf(matured) - dayOf(hatched),
          adultDays: dayOf(ended) - dayOf(matured),
        };
  });

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const spread = (values: readonly number[]): number =>
  Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)) * (values.length / (values.length - 1)));

const at = (tempC: number): readonly RecordOfOne[] => records.filter((record) => record.tempC === tempC);
const maturedAt = (tempC: number) =>
  at(tempC).flatMap(({ immatureDays, adultDays }) =>
    immatureDays === null || adultDays === null ? [] : [{ immatureDays, adultDays }],
  );

const nymph = gryllodesSigillatus.spans.find((span) => span.code === 'nymph')!;
const temperatures = nymph.points.value.map(({ tempC }) => tempC);

describe('the banded cricket', () => {
  it('has the mean days from hatch to adult of the records, to a hundredth', () => {
    for (const { tempC, days } of nymph.points.value)
      expect(mean(maturedAt(tempC).map(({ immatureDays }) => immatureDays))).toBeCloseTo(days, 2);
  });

  it('has the mean spread of the six temperatures', () => {
    const cvs = temperatures.map((tempC) => {
      const days = maturedAt(tempC).map(({ immatureDays }) => immatureDays);
      return spread(days) / mean(days);
    });
    expect(mean(cvs)).toBeCloseTo(gryllodesSigillatus.immatureCv.value, 3);
  });

  it('has the survival from hatch to adult of the records, split over two stages', () => {
    const [, first, later] = gryllodesSigillatus.stages;
    temperatures.forEach((tempC, i) => {
      const split = first!.survival.value[i]!.share * later!.survival.value[i]!.share;
      expect(Math.abs(split - maturedAt(tempC).length / at(tempC).length)).toBeLessThan(0.0051);
    });
  });

  it('has the mean adult life of the records and its spread', () => {
    const { longevity, cv } = gryllodesSigillatus.adult;
    for (const { tempC, days } of longevity.value)
      expect(mean(maturedAt(tempC).map(({ adultDays }) => adultDays))).toBeCloseTo(days, 1);
    const cvs = temperatures.map((tempC) => {
      const days = maturedAt(tempC).map(({ adultDays }) => adultDays);
      return spread(days) / mean(days);
    });
    expect(mean(cvs)).toBeCloseTo(cv.value, 2);
  });

  it('never matured at or below its hard stop', () => {
    const cold = records.filter(({ tempC }) => tempC <= nymph.hardStopC!.value);
    expect(cold).toHaveLength(47);
    expect(cold.filter(({ immatureDays }) => immatureDays !== null)).toEqual([]);
  });
});
