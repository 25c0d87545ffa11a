/**
 * Five substages left with chance 0.25 a day in whole steps make a negative-binomial time (Caswell 2001, Matrix
 * Population Models, chapter 6; values of scipy's nbinom). The engine runs in continuous days: the same mean of 20 days,
 * but an Erlang time with variance 80 instead of 60. Both are recorded, so that nobody takes the one for the other.
 */
import { describe, expect, it } from 'vitest';
import { lowerGammaShare } from '../../src/maths/gamma.ts';
import { dayOfChain } from '../../src/maths/uniformise.ts';

const [SUBSTAGES, CHANCE] = [5, 0.25];
const STEPS = [5, 10, 20, 30, 40];
const NEGATIVE_BINOMIAL = [0.0009765625, 0.0781269073486, 0.58515849747, 0.902130400435, 0.983957760181];

const rate = (j: number) => (j < SUBSTAGES ? CHANCE : 0);
const of = (value: (j: number) => number) => Float64Array.from({ length: SUBSTAGES + 1 }, (_, j) => value(j));
const rates = { exit: of(rate), advance: of(rate), birth: of(() => 0), birthInto: 0 };
const atStart = of((j) => Number(j === 0));

/** Share that has emerged after each number of days. */
function emerged(day: (heads: Float64Array) => Float64Array): number[] {
  let heads: Float64Array = atStart;
  return Array.from({ length: 400 }, () => {
    heads = day(heads);
    return heads[SUBSTAGES]!;
  });
}
const byEngine = emerged((heads) => dayOfChain(heads, rates).heads);
const byWholeSteps = emerged((heads) =>
  heads.map((n, j) => n * (1 - rate(j)) + (j > 0 ? heads[j - 1]! * rate(j - 1) : 0)),
);

describe('a stage of five substages', () => {
  it('is a negative-binomial time in whole daily steps', () => {
    STEPS.forEach((step, i) => {
      expect(Math.abs(byWholeSteps[step - 1]! - NEGATIVE_BINOMIAL[i]!)).toBeLessThan(1e-12);
    });
  });

  it('is an Erlang time in the engine, up to 0.034 from the other', () => {
    STEPS.forEach((step) => {
      expect(byEngine[step - 1]).toBeCloseTo(lowerGammaShare(SUBSTAGES, CHANCE * step), 12);
    });
    const apart = STEPS.map((step, i) => Math.abs(byEngine[step - 1]! - NEGATIVE_BINOMIAL[i]!));
    expect(Math.max(...apart)).toBeGreaterThan(0.034);
    expect(Math.max(...apart)).toBeLessThan(0.035);
  });
});
