/** A sourced number as a line of a table, with what other works say of it. */
import { sentenceCase } from '../../../views/format.ts';
import type { OtherWork, SourceLine } from '../../../views/partials/sources.tsx';
import { sourceWords } from '../../facts/source-words.ts';
import type { Sourced } from '../../husbandry/sourced.ts';

export const lineOf = <T>(what: string, number: Sourced<T>, value: string): SourceLine => ({
  what: sentenceCase(what),
  value,
  status: number.status,
  source: sourceWords(number),
  others: othersOf(number),
  why: number.why ?? null,
});

/** What other works say, each with its source in full. */
export const othersOf = ({ others = [] }: Pick<Sourced<unknown>, 'others'>): readonly OtherWork[] =>
  others.map(({ said, source }) => ({ said, source: sourceWords({ source }) }));
