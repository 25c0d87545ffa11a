/** Growth of every species: a second library, a plain fine-step integration, and what a colony is seen to do. */
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { preySpecies } from '../../../src/facts/prey/index.ts';
import { chainOf } from '../../../src/husbandry/larder/chain.ts';
import { colonyGrowth } from '../../../src/husbandry/larder/colony-growth.ts';
import { ratesOfDay } from '../../../src/husbandry/larder/rates.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { type ChainRates, dayOfChain } from '../../../src/maths/uniformise.ts';
import { constant } from '../../support/rearing.ts';
import { matrixOfChain } from '../../support/stage-matrix.ts';

const ratesAt = (species: PreySpecies, tempC: number): ChainRates =>
  ratesOfDay(chainOf(species), {
    temp: constant(tempC),
    weekMeanC: tempC,
    speed: 1,
    holdingLossPerDay: 0,
    laying: 1,
  });

const BREEDING = preySpecies.filter(({ laying }) => laying);
/** Its least optimum and two degrees below it, twice: there every species breeds. */
const temperatures = ({ spans }: PreySpecies): number[] =>
  [0, 2, 4].map((below) => Math.min(...spans.map(({ optimumC }) => optimumC.value)) - below);

describe.each(BREEDING)('the growth of $commonName', (species) => {
  it('is what another library finds at three temperatures, to 1e-8', () => {
    for (const tempC of temperatures(species)) {
      const rates = ratesAt(species, tempC);
      const found = new EigenvalueDecomposition(new Matrix(matrixOfChain(rates)));
      const greatest = Math.max(...found.realEigenvalues);
      expect(Math.abs(colonyGrowth(rates)!.perDay / greatest - 1)).toBeLessThan(1e-8);
    }
  });

  it('is kept by the daily step: a stable colony grows by it from one day to the next', () => {
    const rates = ratesAt(species, temperatures(species)[0]!);
    const { stable, perDay } = colonyGrowth(rates)!;
    const { heads } = dayOfChain(stable, rates);
    heads.forEach((n, j) => {
      expect(Math.abs(n - stable[j]! * Math.exp(perDay))).toBeLessThan(1e-12);
    });
  });

  it('keeps worth through the daily step: any head and its young are worth its own worth, grown by a day', () => {
    const rates = ratesAt(species, temperatures(species)[0]!);
    const { reproductive, perDay } = colonyGrowth(rates)!;
    reproductive.forEach((worth, from) => {
      const one = new Float64Array(reproductive.length);
      one[from] = 1;
      const after = dayOfChain(one, rates).heads.reduce((sum, n, j) => sum + n * reproductive[j]!, 0);
      expect(Math.abs(after - worth * Math.exp(perDay))).toBeLessThan(1e-9 * (1 + worth));
    });
  });
});

/** The classic fourth-order rule of Runge and Kutta in small steps on dx/dt = A x. */
function integrated(start: Float64Array, rates: ChainRates, steps: number): Float64Array {
  const slope = (x: Float64Array): Float64Array => {
    const born = x.reduce((sum, n, j) => sum + n * rates.birth[j]!, 0);
    return x.map(
      (n, j) =>
        (j > 0 ? x[j - 1]! * rates.advance[j - 1]! : 0) -
        n * rates.exit[j]! +
        (j === rates.birthInto ? born : 0),
    );
  };
  const dt = 1 / steps;
  const along = (x: Float64Array, k: Float64Array, by: number) => x.map((n, j) => n + by * k[j]!);
  let x = start;
  for (let i = 0; i < steps; i++) {
    const k1 = slope(x);
    const k2 = slope(along(x, k1, dt / 2));
    const k3 = slope(along(x, k2, dt / 2));
    const k4 = slope(along(x, k3, dt));
    x = x.map((n, j) => n + (dt / 6) * (k1[j]! + 2 * k2[j]! + 2 * k3[j]! + k4[j]!));
  }
  return x;
}

it.each(BREEDING)('a fine-step integration of $commonName agrees with the daily step, to 1e-6', (species) => {
  const rates = ratesAt(species, temperatures(species)[1]!);
  let exact: Float64Array = new Float64Array(rates.exit.length).fill(1);
  let fine = exact;
  for (let day = 0; day < 20; day++) {
    exact = dayOfChain(exact, rates).heads;
    fine = integrated(fine, rates, 400);
  }
  const most = Math.max(...exact);
  exact.forEach((n, j) => {
    expect(Math.abs(fine[j]! - n) / most).toBeLessThan(1e-6);
  });
});
