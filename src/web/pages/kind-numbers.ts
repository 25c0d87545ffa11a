/** Every value of a kind and its stages in words, with where it comes from and what the Book says in its place. */
import { sentenceCase } from '../../../views/format.ts';
import type { NumberLine } from '../../../views/partials/own-numbers.tsx';
import { sourceWords } from '../../facts/source-words.ts';
import {
  type Kind,
  type KindChanges,
  type KindField,
  kindValues,
  type Own,
  type StageField,
  type StageRule,
  stageValues,
} from '../../husbandry/animals/index.ts';
import { civilDate } from '../../husbandry/calendar.ts';
import { OF_KIND, OF_STAGE, type Word } from './kind-words.ts';

/** The lines of one stage; the rule as the Book has it beside the rule as it stands. */
export function stageLines(rule: StageRule, book: StageRule, changes: KindChanges): readonly NumberLine[] {
  const now = stageValues(rule);
  const own = changes.stages[rule.stage] ?? {};
  return (Object.keys(OF_STAGE) as StageField[])
    .filter((field) => now[field] !== null)
    .map((field) =>
      lineOf(OF_STAGE[field], {
        field,
        own: own[field],
        now,
        book: stageValues(book),
        of: rule,
        bookOf: book,
      }),
    );
}

/** The lines of the kind as a whole. */
export function kindLines(kind: Kind, book: Kind, { kind: own }: KindChanges): readonly NumberLine[] {
  const now = kindValues(kind);
  return (Object.keys(OF_KIND) as KindField[])
    .filter((field) => now[field] !== null)
    .map((field) =>
      lineOf(OF_KIND[field], { field, own: own[field], now, book: kindValues(book), of: kind, bookOf: book }),
    );
}

interface Beside<V, T> {
  readonly field: string;
  readonly own: Own<unknown> | undefined;
  readonly now: V;
  readonly book: V;
  readonly of: T;
  readonly bookOf: T;
}

function lineOf<V, T>(word: Word<V, T>, { field, own, now, book, of, bookOf }: Beside<V, T>): NumberLine {
  const number = word.number?.(of);
  const inBook = word.number?.(bookOf);
  return {
    field,
    what: sentenceCase(word.what),
    value: word.say(now),
    status: own === undefined ? (number?.status ?? null) : 'yours',
    source: number === undefined || own !== undefined ? null : sourceWords(number),
    own:
      own === undefined
        ? null
        : {
            since: civilDate(own.day),
            why: own.why ?? null,
            book: word.say(book),
            bookStatus: inBook?.status ?? null,
            bookSource: inBook === undefined ? null : sourceWords(inBook),
          },
  };
}
