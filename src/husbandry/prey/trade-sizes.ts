/** A window of lengths in the sizes the trade sells. */
import type { Mm } from '../units.ts';
import type { SizeClass } from './species.ts';

export interface TradeSizes {
  /** The size the ideal length belongs to; null where no size sold is so long or so short. */
  readonly best: SizeClass | null;
  /** Sizes whose middle lies in the window, smallest first. */
  readonly taken: readonly SizeClass[];
}

interface Lengths {
  readonly minMm: Mm;
  readonly idealMm: Mm;
  readonly maxMm: Mm;
}

/** Which of these sizes a window stands for. */
export function tradeSizes({ minMm, idealMm, maxMm }: Lengths, sizes: readonly SizeClass[]): TradeSizes {
  const ordered = sizes.toSorted((a, b) => a.fromMm - b.fromMm);
  const middle = ({ fromMm, toMm }: SizeClass): Mm => (fromMm + toMm) / 2;
  const holdsIdeal = ({ fromMm, toMm }: SizeClass): boolean => fromMm <= idealMm && idealMm <= toMm;
  return {
    best: ordered.findLast(holdsIdeal) ?? null,
    taken: ordered.filter((size) => minMm <= middle(size) && middle(size) <= maxMm),
  };
}

/** What the trade calls a size in a word, where it has one: 'medium' for '1/2 in'. */
export const sizeWord = ({ name, aliases }: SizeClass): string => aliases?.[0] ?? name;
