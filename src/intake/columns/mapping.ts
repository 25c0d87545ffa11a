/** Says which of the file's headings stands for which of our columns: chosen by the keeper, ours, or guessed. */
import { type Problem, problem } from '../../husbandry/problems.ts';
import { holdsPhrase, plainWords } from '../names/plain.ts';
import { either, quote } from '../quoting.ts';
import { type ColumnWords, OTHER_MEANINGS } from './words.ts';

export interface ColumnMatch<C extends string = string> {
  readonly column: C;
  /** The heading as the file has it. */
  readonly heading: string;
  /** Place of the cell in a row, from 0. */
  readonly index: number;
  readonly how: 'ours' | 'guessed' | 'chosen';
}

/** Our column -> their heading; an empty heading means: no such column. */
export type Mapping = Readonly<Record<string, string>>;

interface Mapped<C extends string> {
  readonly matches: readonly ColumnMatch<C>[];
  /** Headings that no column of ours reads. */
  readonly unused: readonly string[];
  readonly problems: readonly Problem[];
}

interface Heading {
  readonly text: string;
  readonly plain: string;
  readonly index: number;
}

type Fits = (heading: Heading, word: string) => boolean;

const isExactly: Fits = (heading, word) => heading.plain === word;
const holds: Fits = (heading, word) =>
  holdsPhrase(heading.plain, word) && !OTHER_MEANINGS.some((other) => holdsPhrase(heading.plain, other));

const headingsOf = (cells: readonly string[]): Heading[] =>
  cells
    .map((text, index) => ({ text, plain: plainWords(text), index }))
    .filter((heading) => heading.plain !== '');

const allWords = ({ own, words }: ColumnWords): string[] => [...own, ...words];

/** Known headings in a row of cells: how a heading row is told from others. */
export const knownHeadings =
  (table: readonly ColumnWords[], mapping: Mapping) =>
  (cells: readonly string[]): number => {
    const chosen = new Set(Object.values(mapping).map(plainWords));
    const known = new Set(table.flatMap(allWords));
    return headingsOf(cells).filter(({ plain }) => known.has(plain) || chosen.has(plain)).length;
  };

const place = <C extends string>(
  column: C,
  { text, index }: Heading,
  how: ColumnMatch['how'],
): ColumnMatch<C> => ({ column, heading: text, index, how });

const lacks = (column: string, headings: readonly Heading[]): Problem =>
  problem(
    'heading-unknown',
    `The file has no heading ${quote(column)}. Its headings are ${either(headings.map(({ text }) => quote(text)))}.`,
  );

const notOurs = (column: string, table: readonly ColumnWords[]): Problem =>
  problem(
    'column-unknown',
    `${quote(column)} is not a column that can be read. It can be ${either(table.map((entry) => entry.column))}.`,
  );

/** The keeper's own choices, and what is wrong with them. */
function chosenMatches<C extends string>(
  headings: readonly Heading[],
  table: readonly ColumnWords<C>[],
  mapping: Mapping,
): { readonly matches: ColumnMatch<C>[]; readonly problems: Problem[] } {
  const matches: ColumnMatch<C>[] = [];
  const problems: Problem[] = [];
  for (const [ours, theirs] of Object.entries(mapping)) {
    const column = table.find((entry) => entry.column === ours)?.column;
    const heading =
      headings.find(({ text }) => text === theirs) ??
      headings.find(({ plain }) => plain === plainWords(theirs));
    if (column === undefined) problems.push(notOurs(ours, table));
    else if (heading) matches.push(place(column, heading, 'chosen'));
    else if (theirs.trim() !== '') problems.push(lacks(theirs, headings));
  }
  return { matches, problems };
}

/** Whether another column of ours claims this heading word for word. */
const claimed = ({ plain }: Heading, column: string, table: readonly ColumnWords[]): boolean =>
  table.some((entry) => entry.column !== column && allWords(entry).includes(plain));

/** Headings are taken in passes, the surest first: our own names, known words, known words within a heading. */
export function mapColumns<C extends string>(
  cells: readonly string[],
  table: readonly ColumnWords<C>[],
  mapping: Mapping,
): Mapped<C> {
  const headings = headingsOf(cells);
  const { matches, problems } = chosenMatches(headings, table, mapping);
  const isFree = (heading: Heading): boolean => !matches.some(({ index }) => index === heading.index);
  const pass = (
    wordsOf: (entry: ColumnWords<C>) => readonly string[],
    fits: Fits,
    how: 'ours' | 'guessed',
  ) => {
    for (const entry of table) {
      if (entry.column in mapping || matches.some(({ column }) => column === entry.column)) continue;
      const fitting = (word: string) =>
        headings.find(
          (heading) =>
            isFree(heading) &&
            fits(heading, word) &&
            (fits === isExactly || !claimed(heading, entry.column, table)),
        );
      const heading = wordsOf(entry).map(fitting).find(Boolean);
      if (heading) matches.push(place(entry.column, heading, how));
    }
  };
  pass((entry) => entry.own, isExactly, 'ours');
  pass((entry) => entry.words, isExactly, 'guessed');
  pass(allWords, holds, 'guessed');
  return { matches, unused: headings.filter(isFree).map(({ text }) => text), problems };
}
