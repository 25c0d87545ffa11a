/** A bin's next days in words. */
import type { BinRole } from '../../src/husbandry/larder/index.ts';
import type { BinAnswer } from '../../src/husbandry/supply/index.ts';
import { aboutHeads, expected } from '../format.ts';

/** Where a bin's prey goes: 'about 120 eaten, 15 die, 30 outgrow everyone, 205 left'. */
export function goes({ eaten, died, hatched, arrived, outgrown, left }: BinAnswer, role: BinRole): string {
  const parts: readonly (readonly [number, string])[] = [
    [arrived, 'arrive'],
    [hatched, 'hatch'],
    [eaten, 'eaten'],
    [died, 'die'],
    [outgrown, 'outgrow everyone'],
    [left, 'left'],
  ];
  const said = parts.filter(([n]) => n >= 1).map(([n, word]) => `${expected(n)} ${word}`);
  if (said.length > 0) return said.join(', ');
  return role === 'cup' ? 'no flies' : 'empty';
}

/** How much is alive in it: a count, none, or that nobody has counted. */
export function aliveWords({ headsNow, lookedDaysAgo }: BinAnswer): string {
  const unknown = headsNow.high < 1 && lookedDaysAgo === null;
  return unknown ? 'not counted yet' : aboutHeads(headsNow);
}
