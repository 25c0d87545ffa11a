/** Finds the kind of animal a keeper's words mean: exactly, by genus, by group, or not at all. */
import type { Kind, KindGroup } from '../../husbandry/animals/index.ts';
import { quote } from '../quoting.ts';
import { GROUP_WORDS, HABIT_WORDS } from './group-words.ts';
import {
  exactly,
  type NameBook,
  type NameMatch,
  nameBook,
  nearNames,
  within,
  withoutHedges,
  withSlips,
} from './name-book.ts';
import { holdsPhrase, plainWords, singularWords } from './plain.ts';

interface KindBooks {
  readonly kinds: readonly Kind[];
  readonly all: NameBook<Kind>;
  /** Without the general kinds. */
  readonly single: NameBook<Kind>;
}

const BRACKETED = /[("'“‘[]([^)"'”’\]]*)[)"'”’\]]/g;
const LONGEST_TEXT = 150;
const SHORTEST_GENUS_WITH_SLIP = 6;

function groupOfWords(plain: string): KindGroup | null {
  const singular = singularWords(plain);
  const has = (word: string) => holdsPhrase(singular, word) || holdsPhrase(plain, word);
  return GROUP_WORDS.find(([, words]) => words.some(has))?.[0] ?? null;
}

/** A general kind of the Book carries its group's name instead of a scientific one. */
export const isGeneral = ({ name, madeFrom }: Kind): boolean =>
  madeFrom === undefined && groupOfWords(plainWords(name)) !== null;

const booksOf = (kinds: readonly Kind[]): KindBooks => ({
  kinds,
  all: nameBook(kinds, (plain) => plain),
  single: nameBook(
    kinds.filter((kind) => !isGeneral(kind)),
    (plain) => plain,
  ),
});

/** The whole text, the text outside brackets and quotes, what stands inside them, and what stands before a comma. */
function readings(text: string): string[] {
  const inside = [...text.matchAll(BRACKETED)].map(([, inner = '']) => inner);
  const outside = text.replace(BRACKETED, ' ');
  const all = [text, outside, text.split(/[,;/]| - /)[0] ?? '', ...inside];
  return [...new Set(all.map((one) => withoutHedges(plainWords(one))))].filter(Boolean);
}

function firstOf<T>(texts: readonly string[], find: (plain: string) => T | null): T | null {
  for (const text of texts) {
    const found = find(text);
    if (found !== null) return found;
  }
  return null;
}

/** The general kind of a group; among several, the one whose habit fits. */
function generalKind(kinds: readonly Kind[], group: KindGroup, habit: (kind: Kind) => boolean): Kind | null {
  const general = kinds.filter((kind) => kind.group === group && isGeneral(kind));
  const [first, second] = general.filter(habit);
  if (general.length === 1) return general[0] ?? null;
  return second === undefined ? (first ?? null) : null;
}

const genusOf = (kind: Kind): string => plainWords(kind.name).split(' ')[0] ?? '';

function matchGenus({ kinds }: KindBooks, plain: string): Kind | null {
  const [first = ''] = plain.split(' ');
  const single = kinds.filter((kind) => !isGeneral(kind));
  const members = single.filter((kind) => holdsPhrase(plain, genusOf(kind)));
  const slipped = () =>
    first.length < SHORTEST_GENUS_WITH_SLIP ? [] : single.filter((kind) => exactOrSlip(first, genusOf(kind)));
  const found = members.length > 0 ? members : slipped();
  const groups = new Set(found.map(({ group }) => group));
  const [group] = groups;
  if (group === undefined || groups.size > 1) return null;
  return generalKind(kinds, group, (kind) => found.every(({ habit }) => habit === kind.habit));
}

const exactOrSlip = (word: string, genus: string): boolean =>
  withSlips(
    new Map([[genus, new Set([{ code: genus, name: genus, commonName: '', aliases: [] }])]]),
    word,
  ) !== null;

function matchGroup({ kinds }: KindBooks, plain: string): Kind | null {
  const group = groupOfWords(plain);
  if (group === null) return null;
  const asked = HABIT_WORDS.filter((habit) => holdsPhrase(plain, habit));
  return generalKind(kinds, group, (kind) =>
    asked.some((habit) => holdsPhrase(plainWords(`${kind.name} ${kind.habit}`), habit)),
  );
}

function found(text: string, books: KindBooks): NameMatch<Kind> | null {
  const texts = readings(text.slice(0, LONGEST_TEXT));
  const exact = firstOf(
    texts,
    (plain) => exactly(books.all, plain) ?? exactly(books.all, singularWords(plain)),
  );
  if (exact) return { item: exact, how: 'exact', said: null };
  const read = (kind: Kind, why: string) => `${quote(text)} is read as ${quote(kind.name)}${why}.`;
  const part = firstOf(texts, (plain) => within(books.single, plain));
  if (part) return { item: part, how: 'within', said: read(part, '') };
  const typo = firstOf(texts, (plain) => withSlips(books.all, plain));
  if (typo) return { item: typo, how: 'typo', said: read(typo, ', taking it for a slip of the pen') };
  const genus = firstOf(texts, (plain) => matchGenus(books, plain));
  if (genus)
    return { item: genus, how: 'genus', said: read(genus, ': the genus is known, the species is not') };
  const group = firstOf(texts, (plain) => matchGroup(books, plain));
  return group && { item: group, how: 'group', said: read(group, ': only the group is named') };
}

export interface KindFinder {
  readonly find: (text: string) => NameMatch<Kind> | null;
  readonly near: (text: string) => readonly Kind[];
}

/** A finder over these kinds; each text is looked up once. */
export function kindFinder(kinds: readonly Kind[]): KindFinder {
  const books = booksOf(kinds);
  const seen = new Map<string, NameMatch<Kind> | null>();
  return {
    find: (text) => {
      if (!seen.has(text)) seen.set(text, found(text, books));
      return seen.get(text) ?? null;
    },
    near: (text) => {
      const plain = withoutHedges(plainWords(text));
      const group = groupOfWords(plain);
      const general = kinds.filter((kind) => kind.group === group && isGeneral(kind));
      return general.length > 0 ? general : nearNames(books.all, plain);
    },
  };
}

/** The kind a text means, or null when nothing fits or too much does. */
export const matchKind = (text: string, kinds: readonly Kind[]): NameMatch<Kind> | null =>
  kindFinder(kinds).find(text);
