/** Growth rates against a second library, and what the answer must satisfy by itself. */
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { growthOf } from '../../src/maths/growth-rate.ts';

/** A Leslie matrix: births in the first row, survival below the diagonal. */
const leslie = (births: readonly number[], survival: readonly number[]): number[][] =>
  births.map((_, to) =>
    births.map((birth, from) => (to === 0 ? birth : to === from + 1 ? survival[from]! : 0)),
  );

const modulus = (matrix: number[][]): number => {
  const { realEigenvalues, imaginaryEigenvalues } = new EigenvalueDecomposition(new Matrix(matrix));
  return Math.max(...realEigenvalues.map((re, i) => Math.hypot(re, imaginaryEigenvalues[i]!)));
};

/** Twelve classes of invented rates. */
const TWELVE = leslie(
  Array.from({ length: 12 }, (_, i) => (i < 3 ? 0 : 0.4 + ((i * 7) % 5) / 10)),
  Array.from({ length: 11 }, (_, i) => 0.95 - i / 40),
);
/** All births in the last class: A alone has three eigenvalues of one modulus. */
const ONE_BREEDING_CLASS = leslie([0, 0, 6], [0.5, 0.5]);
/** Forty substages of a daily step, births from the last ten. */
const CHAIN = Array.from({ length: 40 }, (_, to) =>
  Array.from({ length: 40 }, (__, from) =>
    to === from ? 0.6 : to === from + 1 ? 0.38 : to === 0 && from >= 30 ? 1.5 : 0,
  ),
);

describe.each([
  ['twelve classes', TWELVE],
  ['one breeding class', ONE_BREEDING_CLASS],
  ['a chain of forty substages', CHAIN],
])('the growth of %s', (_, matrix) => {
  const growth = growthOf(matrix)!;

  it('has the factor that another library finds', () => {
    expect(growth.factor).toBeCloseTo(modulus(matrix), 9);
  });

  it('multiplies the stable distribution, and the reproductive values, by its factor', () => {
    const ahead = new Matrix(matrix).mmul(Matrix.columnVector([...growth.stable])).to1DArray();
    const back = Matrix.rowVector([...growth.reproductive])
      .mmul(new Matrix(matrix))
      .to1DArray();
    growth.stable.forEach((share, i) => {
      expect(ahead[i]).toBeCloseTo(growth.factor * share, 10);
    });
    growth.reproductive.forEach((worth, i) => {
      expect(Math.abs(back[i]! - growth.factor * worth)).toBeLessThan(
        1e-8 * Math.max(...growth.reproductive),
      );
    });
  });

  it('has shares that sum to 1', () => {
    expect(growth.stable.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });
});

it('knows no long run of a population that dies out, nor of none', () => {
  expect(growthOf([])).toBeNull();
  expect(
    growthOf([
      [0, 0],
      [0.5, 0],
    ]),
  ).toBeNull();
});
