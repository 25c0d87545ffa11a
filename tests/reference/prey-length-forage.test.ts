/**
 * Prey lengths of spiders against our windows. FoRAGE database V4 (2023), 76 trials of 25 spider species, own summary:
 * prey length over spider length (cube root of the mass ratio) has median 0.49 and quartiles 0.28 and 0.67; lengths
 * offered, not chosen, and no tarantulas among them. Natural prey of the jumping spider Menemerus taeniatus: half of
 * it 0.5 to 1.0 of the spider's length, 0.90 on average, 2.17 at most (as we recall Huseynov 2005).
 */
import { describe, expect, it } from 'vitest';
import { kinds, kindsByCode } from '../../src/facts/kinds/index.ts';
import type { PreyWindow } from '../../src/husbandry/animals/kind.ts';

const MEDIAN = 0.49;
const UPPER_QUARTILE = 0.67;

const windowsOf = (group: string): readonly PreyWindow[] =>
  kinds
    .filter((kind) => kind.group === group)
    .flatMap((kind) => kind.stages.map((rule) => rule.window.value));

const fits = (ratio: number, { min, max }: PreyWindow): boolean => min <= ratio && ratio <= max;

describe('prey lengths of spiders', () => {
  it('holds the middle and the upper quartile of what spiders are offered in trials', () => {
    const windows = windowsOf('true spider');
    expect(windows).toHaveLength(5 * 3);
    expect(windows.filter((window) => !fits(MEDIAN, window) || !fits(UPPER_QUARTILE, window))).toEqual([]);
  });

  it('accepts prey of 5 to 10 mm for a jumping spider of 10 mm and refuses 22 mm', () => {
    const spider = kindsByCode.get('phidippus-regius')!;
    const bodyMm = 10 * spider.bodyPerGauge.value;
    for (const { window } of spider.stages) {
      expect([5, 7.5, 10].every((preyMm) => fits(preyMm / bodyMm, window.value))).toBe(true);
      expect(fits(22 / bodyMm, window.value)).toBe(false);
    }
  });

  it('aims at prey between the middle and the mean of what jumping spiders take in the wild', () => {
    for (const { ideal } of windowsOf('jumping spider')) {
      expect(ideal).toBeGreaterThan(0.5);
      expect(ideal).toBeLessThan(0.903);
    }
  });
});
