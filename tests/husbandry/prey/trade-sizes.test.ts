/** Windows in the trade's sizes. */
import { describe, expect, it } from 'vitest';
import { cricketClasses } from '../../../src/facts/prey/trade-sizes.ts';
import { sizeWord, tradeSizes } from '../../../src/husbandry/prey/trade-sizes.ts';

const window = (minMm: number, idealMm: number, maxMm: number) => ({ minMm, idealMm, maxMm });

describe('a window among the sizes of crickets', () => {
  it.each([
    ['of a juvenile', window(11, 13, 15), 'medium', ['medium']],
    ['of a spiderling', window(2, 3.2, 5), 'micro', ['pinhead', 'micro']],
    ['between two sizes, the larger', window(2, 3, 4), 'micro', ['pinhead', 'micro']],
    ['too short for any middle, the nearest that overlaps', window(1, 1.8, 2.4), 'pinhead', ['pinhead']],
    ['of a large adult', window(12, 24, 48), 'adult', ['medium', 'large', 'adult']],
    ['that is best longer than any sold, the longest', window(15, 30, 60), 'adult', ['large', 'adult']],
  ])('%s', (_, lengths, best, taken) => {
    const sizes = tradeSizes(lengths, cricketClasses);
    expect(sizes.best && sizeWord(sizes.best)).toBe(best);
    const words = sizes.taken.map(sizeWord);
    expect(words).toEqual(taken);
  });

  it('no size stands for a window beyond all of them', () => {
    expect(tradeSizes(window(30, 40, 50), cricketClasses)).toEqual({ best: null, taken: [] });
  });
});
