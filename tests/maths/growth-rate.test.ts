/** Growth of stage chains: what the answer must satisfy by itself, for any chain. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { growthOf, shareToSpare } from '../../src/maths/growth-rate.ts';
import type { ChainRates } from '../../src/maths/uniformise.ts';
import { chainOfMatrix, matrixOfChain } from '../support/stage-matrix.ts';

const rate = fc.double({ min: 0.01, max: 2, noNaN: true });
const chains: fc.Arbitrary<ChainRates> = fc
  .array(fc.record({ advance: rate, death: rate, birth: rate, breeds: fc.boolean() }), {
    minLength: 2,
    maxLength: 30,
  })
  .map((stages) => {
    const last = stages.length - 1;
    return {
      exit: Float64Array.from(stages, ({ advance, death }, j) => death + (j < last ? advance : 0)),
      advance: Float64Array.from(stages, ({ advance }, j) => (j < last ? advance : 0)),
      birth: Float64Array.from(stages, ({ birth, breeds }, j) => (breeds || j === last ? 5 * birth : 0)),
      birthInto: 0,
    };
  });

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

describe('the growth of any chain in which the last breed', () => {
  it('multiplies the stable distribution and the reproductive values by its rate', () => {
    fc.assert(
      fc.property(chains, (rates) => {
        const { rate: r, stable, reproductive } = growthOf(rates)!;
        const matrix = matrixOfChain(rates);
        const most = Math.max(...reproductive);
        stable.forEach((share, i) => {
          const ahead = sumOf(matrix.map((_, j) => matrix[i]![j]! * stable[j]!));
          const back = sumOf(matrix.map((row, j) => row[i]! * reproductive[j]!));
          expect(Math.abs(ahead - r * share)).toBeLessThan(1e-9);
          expect(Math.abs(back - r * reproductive[i]!)).toBeLessThan(1e-9 * most);
        });
        expect(sumOf([...stable])).toBeCloseTo(1, 12);
        expect(reproductive[0]).toBe(1);
      }),
      { seed: 1, endOnFailure: true },
    );
  });

  it('has a generation that is the mean age at which a newborn, discounted by growth, gives birth', () => {
    const rates: ChainRates = {
      exit: Float64Array.of(0.5, 0.4, 0.1),
      advance: Float64Array.of(0.4, 0.3, 0),
      birth: Float64Array.of(0, 0, 0.6),
      birthInto: 0,
    };
    const { rate: r, generation } = growthOf(rates)!;
    expect(generation).toBeCloseTo(sumOf([0.5, 0.4, 0.1].map((exit) => 1 / (exit + r))), 12);
  });
});

it('knows no long run where nobody breeds, nor where those past breeding outlast all growth', () => {
  expect(
    growthOf(
      chainOfMatrix([
        [0, 0],
        [0.5, 0],
      ]),
    ),
  ).toBeNull();
  expect(
    growthOf(
      chainOfMatrix([
        [0, 0.5, 0],
        [0.5, 0, 0],
        [0, 0.5, 0.9],
      ]),
    ),
  ).toBeNull();
});

it('leaves nothing to be taken of what does not grow', () => {
  expect(shareToSpare(0.9)).toBe(0);
  expect(shareToSpare(1.25)).toBeCloseTo(0.2, 12);
});
