/** Finds the prey species a keeper's words mean: by name, by common name, or by its form. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { quote } from '../quoting.ts';
import { FORM_WORDS, USUAL_SPECIES } from './group-words.ts';
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

const plainOf = (text: string): string => singularWords(withoutHedges(plainWords(text)));

function ofForm(plain: string, species: readonly PreySpecies[]): readonly PreySpecies[] {
  const form = FORM_WORDS.find(([, words]) => words.some((word) => holdsPhrase(plain, word)))?.[0];
  return species.filter((one) => one.form === form);
}

/** The only species of a form, or the one most often meant. */
function usual(candidates: readonly PreySpecies[]): PreySpecies | null {
  const [first, second] = candidates;
  if (first === undefined || second === undefined) return first ?? null;
  return candidates.find(({ form, name }) => USUAL_SPECIES[form] === plainWords(name)) ?? null;
}

function found(
  text: string,
  species: readonly PreySpecies[],
  book: NameBook<PreySpecies>,
): NameMatch<PreySpecies> | null {
  const plain = plainOf(text);
  const read = (one: PreySpecies, why: string) => `${quote(text)} is read as ${quote(one.commonName)}${why}.`;
  const exact = exactly(book, plain);
  if (exact) return { item: exact, how: 'exact', said: null };
  const part = within(book, plain);
  if (part) return { item: part, how: 'within', said: read(part, '') };
  const assumed = usual(ofForm(plain, species));
  if (assumed) return { item: assumed, how: 'group', said: read(assumed, ': the species is assumed') };
  const typo = withSlips(book, plain);
  return typo && { item: typo, how: 'typo', said: read(typo, ', taking it for a slip of the pen') };
}

export interface PreyFinder {
  readonly find: (text: string) => NameMatch<PreySpecies> | null;
  readonly near: (text: string) => readonly PreySpecies[];
}

/** A finder over these species; each text is looked up once. */
export function preyFinder(species: readonly PreySpecies[]): PreyFinder {
  const book = nameBook(species, singularWords);
  const seen = new Map<string, NameMatch<PreySpecies> | null>();
  return {
    find: (text) => {
      if (!seen.has(text)) seen.set(text, found(text, species, book));
      return seen.get(text) ?? null;
    },
    near: (text) => {
      const same = ofForm(plainOf(text), species);
      return same.length > 0 ? same : nearNames(book, plainOf(text));
    },
  };
}

/** The species a text means, or null when nothing fits or too much does. */
export const matchPrey = (text: string, species: readonly PreySpecies[]): NameMatch<PreySpecies> | null =>
  preyFinder(species).find(text);
