/** A window of lengths in the sizes the trade sells. */
import type { Mm } from '../units.ts';
import type { SizeClass } from './species.ts';

export interface TradeSizes {
  /** The size the ideal length belongs to, else the nearest that overlaps the window; null where none does. */
  readonly best: SizeClass | null;
  /** Sizes whose middle lies in the window, smallest first; where there are none, the best. */
  readonly taken: readonly SizeClass[];
}

interface Lengths {
  readonly minMm: Mm;
  readonly idealMm: Mm;
  readonly maxMm: Mm;
}

const middle = ({ fromMm, toMm }: SizeClass): Mm => (fromMm + toMm) / 2;

/** Which of these sizes a window stands for. */
export function tradeSizes({ minMm, idealMm, maxMm }: Lengths, sizes: readonly SizeClass[]): TradeSizes {
  const away = ({ fromMm, toMm }: SizeClass): Mm => Math.max(fromMm - idealMm, idealMm - toMm, 0);
  const [best = null] = sizes
    .filter(({ fromMm, toMm }) => fromMm <= maxMm && minMm <= toMm)
    .toSorted((a, b) => away(a) - away(b) || b.fromMm - a.fromMm);
  const taken = sizes
    .filter((size) => minMm <= middle(size) && middle(size) <= maxMm)
    .toSorted((a, b) => a.fromMm - b.fromMm);
  return { best, taken: taken.length > 0 || best === null ? taken : [best] };
}

/** What the trade calls a size in a word, where it has one: 'medium' for '1/2 in'. */
export const sizeWord = ({ name, aliases }: SizeClass): string => aliases?.[0] ?? name;
