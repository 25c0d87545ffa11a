/** A source as a line of a list of references. */
import type { Sourced } from '../husbandry/sourced.ts';
import { type Source, sources } from './sources.ts';

/** The reference in full, or what is said instead of one; null when nothing is. */
export function sourceWords({ source, note }: Pick<Sourced<unknown>, 'source' | 'note'>): string | null {
  const found = sources[source];
  const words = [found === undefined ? null : wordsOf(found), note ?? null].filter((part) => part !== null);
  return words.length === 0 ? null : words.join('; ');
}

function wordsOf(source: Source): string {
  if (source.kind !== 'work') return source.note;
  const { author, year, title, where, doi, url } = source;
  const link = doi === undefined ? url : `doi:${doi}`;
  return [`${author} (${year})`, title, where, link].filter((part) => part !== undefined).join('. ');
}
