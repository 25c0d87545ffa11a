/** A projection matrix with births in its first row, staying on its diagonal and advance below it, as a stage chain. */
import type { ChainRates } from '../../src/maths/uniformise.ts';

/** Leaving "minus what stays": the chain's growth rate is then the matrix's factor per step. */
export const chainOfMatrix = (matrix: readonly (readonly number[])[]): ChainRates => {
  const of = (rate: (j: number) => number) => Float64Array.from(matrix, (_, j) => rate(j));
  return {
    exit: of((j) => (j === 0 ? 0 : -matrix[j]![j]!)),
    advance: of((j) => matrix[j + 1]?.[j] ?? 0),
    birth: of((j) => matrix[0]![j]!),
    birthInto: 0,
  };
};

/** A[to][from] of a chain's rates per day. */
export const matrixOfChain = ({ exit, advance, birth, birthInto }: ChainRates): number[][] =>
  Array.from(exit, (_, to) =>
    Array.from(
      exit,
      (leaves, from) =>
        (to === from ? -leaves : 0) +
        (to === from + 1 ? advance[from]! : 0) +
        (to === birthInto ? birth[from]! : 0),
    ),
  );
