/**
 * A stage of k equal parts, exit k/D, of which the share s^(1/k) advances: survival s, survivors' mean D and CV
 * 1/sqrt(k) hold exactly (the linear chain trick). The transfer function of the stage is (advance / (exit + z))^k; its
 * value and slopes at 0 give all three.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitExit } from '../../src/husbandry/larder/rates.ts';
import { lowerGammaShare } from '../../src/maths/gamma.ts';
import { dayOfChain } from '../../src/maths/uniformise.ts';

const EXACT = 1e-12;
const stages = fc.record({
  k: fc.integer({ min: 1, max: 200 }),
  days: fc.double({ min: 0.1, max: 400, noNaN: true }),
  survival: fc.double({ min: 0.01, max: 1, noNaN: true }),
});
const near = (a: number, b: number): boolean => Math.abs(a / b - 1) < EXACT;

describe('a stage split into equal parts', () => {
  it('keeps survival, mean and spread for any number of parts, to 1e-12', () => {
    fc.assert(
      fc.property(stages, ({ k, days, survival }) => {
        const { exit, advance } = splitExit(k, days, survival);
        const [mean, variance] = [k / exit, k / exit ** 2];
        return (
          near((advance / exit) ** k, survival) &&
          near(mean, days) &&
          near(Math.sqrt(variance) / mean, 1 / Math.sqrt(k))
        );
      }),
      { seed: 1 },
    );
  });

  it('lets survivors out of the running chain as an Erlang time does, on every day', () => {
    for (const { k, days, survival } of [
      { k: 5, days: 20, survival: 0.6 },
      { k: 50, days: 43.74, survival: 0.83 },
    ]) {
      const { exit, advance } = splitExit(k, days, survival);
      const of = (rate: number) => new Float64Array(k + 1).fill(rate, 0, k);
      const rates = { exit: of(exit), advance: of(advance), birth: of(0), birthInto: 0 };
      let heads = new Float64Array(k + 1);
      heads[0] = 1;
      for (let day = 1; day <= 60; day++) {
        heads = new Float64Array(dayOfChain(heads, rates).heads);
        expect(Math.abs(heads[k]! - survival * lowerGammaShare(k, exit * day))).toBeLessThan(EXACT);
      }
    }
  });
});
