/** A book of names to look things up in: exactly, inside a longer text, or with slips of the pen. */
import { slipsBetween } from './distance.ts';
import { holdsPhrase, plainWords } from './plain.ts';

export interface Named {
  readonly code: string;
  readonly name: string;
  readonly commonName: string;
  readonly aliases: readonly string[];
}

export type NameBook<T extends Named> = ReadonlyMap<string, ReadonlySet<T>>;

/** How a text was matched; all but 'exact' are said. */
export type MatchHow = 'exact' | 'within' | 'typo' | 'genus' | 'group' | 'answer';

export interface NameMatch<T extends Named> {
  readonly item: T;
  readonly how: MatchHow;
  /** A sentence when the match is not word for word. */
  readonly said: string | null;
}

const SHORTEST_WITH_SLIP = 5;
const SHORTEST_WITH_TWO_SLIPS = 9;
const MOST_NEAR = 3;
const NEAR_SLIPS = 4;

/** Words that hedge a name and say nothing of which it is. */
const HEDGES = new Set(['sp', 'spp', 'cf', 'aff', 'spec', 'species', 'var', 'ex', 'the', 'unknown']);

export const withoutHedges = (plain: string): string =>
  plain
    .split(' ')
    .filter((word) => !HEDGES.has(word))
    .join(' ');

/** "Brachypelma hamorii" is also written "B. hamorii". */
const shortened = (plain: string): string[] => {
  const [genus = '', epithet, ...rest] = plain.split(' ');
  return epithet !== undefined && rest.length === 0 ? [`${genus.charAt(0)} ${epithet}`] : [];
};

export function nameBook<T extends Named>(items: readonly T[], form: (plain: string) => string): NameBook<T> {
  const book = new Map<string, Set<T>>();
  const add = (key: string, item: T) => {
    if (key !== '') book.set(key, (book.get(key) ?? new Set()).add(item));
  };
  for (const item of items) {
    for (const name of [item.name, item.commonName, item.code, ...item.aliases]) {
      const plain = withoutHedges(plainWords(name));
      add(form(plain), item);
      for (const short of shortened(plain)) add(form(short), item);
    }
  }
  return book;
}

const only = <T>(items: Iterable<T>): T | null => {
  const [first, second] = [...new Set(items)];
  return second === undefined ? (first ?? null) : null;
};

export const exactly = <T extends Named>(book: NameBook<T>, plain: string): T | null =>
  only(book.get(plain) ?? []);

/** The one thing whose longest name stands inside the text. */
export function within<T extends Named>(book: NameBook<T>, plain: string): T | null {
  const held = [...book].filter(([key]) => key.length > 2 && holdsPhrase(plain, key));
  const longest = Math.max(0, ...held.map(([key]) => key.length));
  return only(held.filter(([key]) => key.length === longest).flatMap(([, items]) => [...items]));
}

const slipsAllowed = (length: number): number => {
  if (length < SHORTEST_WITH_SLIP) return 0;
  return length < SHORTEST_WITH_TWO_SLIPS ? 1 : 2;
};

/** The one thing with the fewest slips; the first letter must be right, and nothing else as near. */
export function withSlips<T extends Named>(book: NameBook<T>, plain: string): T | null {
  const most = slipsAllowed(plain.length);
  const near = [...book].flatMap(([key, items]) => {
    const slips = key[0] === plain[0] && most > 0 ? slipsBetween(plain, key, most) : null;
    return slips === null || slips >= key.length / 3 ? [] : [{ slips, items }];
  });
  const fewest = Math.min(...near.map(({ slips }) => slips));
  return only(near.filter(({ slips }) => slips === fewest).flatMap(({ items }) => [...items]));
}

/** Things with names not far from the text, the nearest first, to offer when asking. */
export function nearNames<T extends Named>(book: NameBook<T>, plain: string): T[] {
  const [genus = ''] = plain.split(' ');
  const scored = [...book].flatMap(([key, items]) => {
    const sharesWord = genus.length > 2 && holdsPhrase(key, genus);
    const slips = sharesWord ? 0 : slipsBetween(plain, key, NEAR_SLIPS);
    return slips === null || slips >= key.length / 2 ? [] : [...items].map((item) => ({ item, slips }));
  });
  const sorted = scored.sort((a, b) => a.slips - b.slips).map(({ item }) => item);
  return [...new Set(sorted)].slice(0, MOST_NEAR);
}
