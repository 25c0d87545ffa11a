/** Whether so many of a kind can be supposed sold: of those that live here and are not to leave already. */
import { type Supposed, staying, supposing } from '../../husbandry/plan/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { plural } from '../../husbandry/words.ts';

type Sold = Extract<Supposed, { what: 'sell' }>;

/** A sentence about more than there are beside what is supposed together with it; null where there are enough. */
export function tooManySold(
  { kind, heads }: Sold,
  snapshot: Snapshot,
  together: readonly Supposed[],
): string | null {
  const here = staying(supposing(snapshot, together), kind).reduce((sum, { count }) => sum + count, 0);
  if (heads <= here) return null;
  const called = plural(snapshot.facts.kinds.get(kind)?.commonName ?? kind);
  const there = here === 1 ? 'there is 1' : `there are ${here === 0 ? 'none' : here}`;
  return `"${heads}" ${called}: ${there}.`;
}
