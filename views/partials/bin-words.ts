/** A bin's next days in words. */
import type { BinAnswer } from '../../src/husbandry/supply/index.ts';
import { expected } from '../format.ts';

/** Where a bin's prey goes: 'about 120 eaten, 15 die, 30 outgrow everyone, 205 left'. */
export function goes({ eaten, died, hatched, arrived, outgrown, left }: BinAnswer): string {
  const parts: readonly (readonly [number, string])[] = [
    [arrived, 'arrive'],
    [hatched, 'hatch'],
    [eaten, 'eaten'],
    [died, 'die'],
    [outgrown, 'outgrow everyone'],
    [left, 'left'],
  ];
  const said = parts.filter(([n]) => n >= 1).map(([n, word]) => `${expected(n)} ${word}`);
  return said.length === 0 ? 'empty' : said.join(', ');
}
