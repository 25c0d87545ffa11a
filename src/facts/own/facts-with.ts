/** The Book as the keeper changed it: the facts everything is asked with. */
import type { ChangedKind, Kind } from '../../husbandry/animals/index.ts';
import { type ChangedNumbers, METHOD, type OwnNumbers } from '../../husbandry/own-numbers.ts';
import type { Policy } from '../../husbandry/policy.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import type { Facts } from '../../husbandry/snapshot.ts';
import { kindWith } from './kind-with.ts';
import { methodNumbers } from './method-numbers.ts';
import { withNumbers } from './numbers-with.ts';
import { preyNumbers } from './prey-numbers.ts';

/** Everything the keeper changed of the Book. */
export interface BookChanges {
  readonly kinds: readonly ChangedKind[];
  readonly numbers: readonly ChangedNumbers[];
}

interface Merged {
  /** What was changed, as text. */
  readonly of: string;
  readonly facts: Facts;
}

const latest = new WeakMap<Facts, Merged>();

/** The same changes of the same Book give the same object, so that what is kept by its facts stays good. */
export function factsWith(book: Facts, changed: BookChanges): Facts {
  if (changed.kinds.length === 0 && changed.numbers.length === 0) return book;
  const of = JSON.stringify([changed.kinds, changed.numbers]);
  const known = latest.get(book);
  if (known?.of === of) return known.facts;
  const facts = {
    kinds: kindsWith(book.kinds, changed.kinds),
    species: speciesWith(book.species, changed.numbers),
    policy: methodWith(book.policy, changed.numbers.find(({ code }) => code === METHOD)?.changes ?? {}),
  };
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

/** Changed prey species in their places. */
function speciesWith(
  book: ReadonlyMap<string, PreySpecies>,
  changed: readonly ChangedNumbers[],
): ReadonlyMap<string, PreySpecies> {
  const own = changed.filter(({ code }) => book.has(code));
  if (own.length === 0) return book;
  const species = new Map(book);
  for (const { code, changes } of own) species.set(code, preyWith(book.get(code) as PreySpecies, changes));
  return species;
}

export const preyWith = (book: PreySpecies, changes: OwnNumbers): PreySpecies =>
  withNumbers(book, preyNumbers(book), changes);

export const methodWith = (book: Policy, changes: OwnNumbers): Policy =>
  withNumbers(book, methodNumbers(book), changes);

/** Facts with one kind changed otherwise, for a look ahead: nothing of it is kept. */
export function factsTrying({ book, facts }: { book: Facts; facts: Facts }, tried: ChangedKind): Facts {
  const base = book.kinds.get(tried.base ?? tried.code);
  if (base === undefined) return facts;
  return { ...facts, kinds: new Map(facts.kinds).set(tried.code, kindWith(base, tried)) };
}
