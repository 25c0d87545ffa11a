/** One day of a chain against the dense matrix exponential of a second library. */
import fc from 'fast-check';
import { expm, matrix, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { speciesByCode } from '../../src/facts/prey/index.ts';
import { chainOf } from '../../src/husbandry/larder/chain.ts';
import { ratesOfDay } from '../../src/husbandry/larder/rates.ts';
import { type ChainRates, dayOfChain } from '../../src/maths/uniformise.ts';

/** The generator with two rows more that gather births and deaths; what leaves the last compartment has died. */
function denseOf({ exit, advance, birth, birthInto }: ChainRates): number[][] {
  const n = exit.length;
  const a = Array.from({ length: n + 2 }, () => new Array<number>(n + 2).fill(0));
  const add = (to: number, from: number, rate: number) => {
    a[to]![from] = a[to]![from]! + rate;
  };
  for (let j = 0; j < n; j++) {
    add(j, j, -exit[j]!);
    if (j + 1 < n) add(j + 1, j, advance[j]!);
    add(birthInto, j, birth[j]!);
    add(n, j, birth[j]!);
    add(n + 1, j, exit[j]! - (j + 1 < n ? advance[j]! : 0));
  }
  return a;
}

function expectSameDay(heads: Float64Array, rates: ChainRates): void {
  const dense = multiply(expm(matrix(denseOf(rates))), [...heads, 0, 0]).valueOf() as number[];
  const day = dayOfChain(heads, rates);
  const scale = 1 + heads.reduce((a, b) => a + b, 0) + day.born;
  heads.forEach((_, j) => {
    expect(Math.abs(day.heads[j]! - dense[j]!) / scale).toBeLessThan(1e-12);
  });
  expect(Math.abs(day.born - dense[heads.length]!) / scale).toBeLessThan(1e-12);
  expect(Math.abs(day.died - dense[heads.length + 1]!) / scale).toBeLessThan(1e-12);
}

const rate = (max: number) => fc.double({ min: 0, max, noNaN: true });
const compartments = fc.array(fc.tuple(rate(4), rate(1), rate(2), rate(50)), { minLength: 1, maxLength: 8 });

describe('one day of a chain', () => {
  it('is the matrix exponential for any small chain, births and deaths too', () => {
    fc.assert(
      fc.property(compartments, fc.nat(), (list, into) => {
        const of = (k: 0 | 1 | 2 | 3) => Float64Array.from(list, (c) => c[k]);
        const exit = of(0);
        const advance = exit.map((e, j) => e * of(1)[j]!);
        expectSameDay(of(3), { exit, advance, birth: of(2), birthInto: into % list.length });
      }),
      { numRuns: 100, seed: 1 },
    );
  });

  it('is the matrix exponential for the whole life of the banded cricket with births', () => {
    const chain = chainOf(speciesByCode.get('gryllodes-sigillatus')!);
    const temp = { minC: 28, maxC: 32 };
    const rates = ratesOfDay(chain, { temp, weekMeanC: 30, speed: 1, holdingLossPerDay: 0, laying: 1 });
    const heads = Float64Array.from({ length: chain.size }, (_, j) => 1 + (j % 5));
    expect(chain.size).toBeGreaterThan(60);
    expectSameDay(heads, rates);
  });

  it('is the same where the day is laid out as a band, at any laying', () => {
    const chain = chainOf(speciesByCode.get('gryllodes-sigillatus')!);
    const temp = { minC: 28, maxC: 32 };
    const keeping = { temp, weekMeanC: 30, speed: 1, holdingLossPerDay: 0, laying: 1 };
    const heads = Float64Array.from({ length: chain.size }, (_, j) => 1 + (j % 5));
    for (const laying of [0, 0.3, 1]) {
      const [banded, jumped] = [true, false].map((lasting) =>
        dayOfChain(heads, ratesOfDay(chain, { ...keeping, lasting }), laying),
      );
      expect(Math.abs(banded!.born - jumped!.born)).toBeLessThan(1e-12 * (1 + jumped!.born));
      expect(Math.abs(banded!.died - jumped!.died)).toBeLessThan(1e-12 * 1000);
      jumped!.heads.forEach((n, j) => {
        expect(Math.abs(banded!.heads[j]! - n)).toBeLessThan(1e-12 * (1 + jumped!.born));
      });
    }
  });

  it('is jumped day by day where what is born bears on the same day', () => {
    const rates = {
      exit: Float64Array.of(1),
      advance: Float64Array.of(0),
      birth: Float64Array.of(2),
      birthInto: 0,
      lasting: true,
    };
    for (let day = 0; day < 5; day++)
      expect(dayOfChain(Float64Array.of(1), rates).heads[0]).toBeCloseTo(Math.E, 12);
  });

  it('keeps up with young that are laid faster than anybody leaves', () => {
    const one = (x: number) => Float64Array.of(x);
    const day = dayOfChain(one(1), { exit: one(0), advance: one(0), birth: one(2), birthInto: 0 });
    expect(day.heads[0]).toBeCloseTo(Math.exp(2), 12);
  });

  it('loses and makes nobody: heads before and born are heads after and died', () => {
    fc.assert(
      fc.property(compartments, (list) => {
        const of = (k: 0 | 1 | 2 | 3) => Float64Array.from(list, (c) => c[k]);
        const exit = of(0);
        const heads = of(3);
        const day = dayOfChain(heads, {
          exit,
          advance: exit.map((e, j) => e * of(1)[j]!),
          birth: of(2),
          birthInto: 0,
        });
        const sum = (v: Float64Array) => v.reduce((a, b) => a + b, 0);
        const before = sum(heads) + day.born;
        expect(Math.abs(sum(day.heads) + day.died - before)).toBeLessThan(1e-11 * (1 + before));
      }),
      { seed: 2 },
    );
  });
});
