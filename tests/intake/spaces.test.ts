/** Sizes of bins as keepers write them. */
import { describe, expect, it } from 'vitest';
import { readSpace } from '../../src/intake/index.ts';

describe('the size of a bin', () => {
  it.each([
    ['40 l', 'volume', 40],
    ['40 litres', 'volume', 40],
    ['750 ml', 'volume', 0.75],
    ['10 gal', 'volume', 37.854_117_84],
    ['30 dm2', 'area', 30],
    ['30 dm²', 'area', 30],
    ['1,5 m2', 'area', 150],
    ['2 sq ft', 'area', 18.580_608],
    ['500 g', 'medium', 500],
    ['2 kg', 'medium', 2000],
  ] as const)('%s is read', (text, by, units) => {
    const read = readSpace(text);
    expect(read.ok && read.value.by).toBe(by);
    expect(read.ok && read.value.units).toBeCloseTo(units, 9);
  });

  it.each(['40', 'big', '0 l', '-3 l', '40 stone', ''])('"%s" is refused and quoted', (text) => {
    const read = readSpace(text);
    expect(read.ok ? '' : read.problem.sentence).toContain(`"${text}" is not a size that can be read`);
  });
});
