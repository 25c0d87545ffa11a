/** What is marked on the curve of a bulk order: where a pack gets cheaper, and where the postage is spared. */
import { packCents } from '../../src/husbandry/orders/index.ts';
import { money } from '../format.ts';
import type { BulkTold } from '../pages/bulk-words.ts';

interface Mark {
  readonly packs: number;
  readonly words: string;
}

/** In the order of the packs from which they hold. */
export function marksOf({ answer, offer, supplier, currency }: BulkTold): readonly Mark[] {
  const prices = answer.breaks
    .filter(({ fromPacks }) => fromPacks > 1)
    .map(({ fromPacks, packCents: cents }) => ({
      packs: fromPacks,
      words: `${money(cents, currency)} a pack`,
    }));
  const { freeFromCents, flatCents } = supplier.postage;
  const free = answer.curves[0]!.points.find(
    ({ packs }) =>
      flatCents > 0 && freeFromCents !== null && packs * packCents(offer, packs) >= freeFromCents,
  );
  return [...prices, ...(free === undefined ? [] : [{ packs: free.packs, words: 'post free' }])].sort(
    (a, b) => a.packs - b.packs,
  );
}
