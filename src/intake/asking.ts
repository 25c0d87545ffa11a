/** Gathers questions, so that each is put once for all the rows it concerns. */
import { either, quote } from './quoting.ts';
import type { Ask, Choice } from './reading.ts';

interface Question {
  readonly about: Ask['about'];
  readonly text: string;
  readonly near: readonly Choice[];
}

export interface Questions {
  readonly put: (row: number, question: Question) => void;
  readonly all: () => readonly Ask[];
}

const rowsInWords = (rows: readonly number[]): string =>
  rows.length === 1 ? `row ${rows[0]}` : `${rows.length} rows, first in row ${rows[0]}`;

function sentenceOf({ about, text, near }: Question, rows: readonly number[]): string {
  if (about === 'unit')
    return `Sizes such as ${quote(text)} have no unit (${rowsInWords(rows)}). Are they in inches, centimetres or millimetres?`;
  const thing = about === 'kind' ? 'kind of animal' : 'prey species';
  const hint = near.length > 0 ? ` Perhaps ${either(near.map(({ name }) => name))}?` : '';
  if (text === '') return `Some rows name no ${thing} (${rowsInWords(rows)}). Which is it?${hint}`;
  return `${quote(text)} is not a known ${thing} (${rowsInWords(rows)}). Which is it?${hint}`;
}

export function openQuestions(): Questions {
  const asked = new Map<string, { readonly question: Question; readonly rows: number[] }>();
  return {
    put: (row, question) => {
      const key = question.about === 'unit' ? 'unit' : `${question.about} ${question.text}`;
      const before = asked.get(key) ?? { question, rows: [] };
      if (before.rows.at(-1) !== row) before.rows.push(row);
      asked.set(key, before);
    },
    all: () =>
      [...asked.values()].map(({ question, rows }) => ({
        ...question,
        rows,
        sentence: sentenceOf(question, rows),
      })),
  };
}
