/** The Book as the keeper changed it: the facts everything is asked with. */
import type { ChangedKind, Kind } from '../../husbandry/animals/index.ts';
import type { Facts } from '../../husbandry/snapshot.ts';
import { kindWith } from './kind-with.ts';

interface Merged {
  /** What was changed, as text. */
  readonly of: string;
  readonly facts: Facts;
}

const latest = new WeakMap<Facts, Merged>();

/** The same changes of the same Book give the same object, so that what is kept by its facts stays good. */
export function factsWith(book: Facts, changed: readonly ChangedKind[]): Facts {
  if (changed.length === 0) return book;
  const of = JSON.stringify(changed);
  const known = latest.get(book);
  if (known?.of === of) return known.facts;
  const facts = { ...book, kinds: kindsWith(book.kinds, changed) };
  latest.set(book, { of, facts });
  return facts;
}

/** Changed kinds in their places, those of the keeper's own at the end. */
function kindsWith(
  book: ReadonlyMap<string, Kind>,
  changed: readonly ChangedKind[],
): ReadonlyMap<string, Kind> {
  const kinds = new Map(book);
  for (const each of changed) {
    const base = book.get(each.base ?? each.code);
    if (base !== undefined) kinds.set(each.code, kindWith(base, each));
  }
  return kinds;
}

/** Facts with one kind changed otherwise, for a look ahead: nothing of it is kept. */
export function factsTrying({ book, facts }: { book: Facts; facts: Facts }, tried: ChangedKind): Facts {
  const base = book.kinds.get(tried.base ?? tried.code);
  if (base === undefined) return facts;
  return { ...facts, kinds: new Map(facts.kinds).set(tried.code, kindWith(base, tried)) };
}
