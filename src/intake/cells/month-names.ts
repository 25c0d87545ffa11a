/** Month names in English, German, French and Spanish, by their first letters: a table. */
import { plainWords } from '../names/plain.ts';

const BEGINNINGS: readonly (readonly [string, number])[] = [
  ['jan', 1],
  ['ene', 1],
  ['feb', 2],
  ['fev', 2],
  ['mar', 3],
  ['mrz', 3],
  ['maer', 3],
  ['apr', 4],
  ['avr', 4],
  ['abr', 4],
  ['mai', 5],
  ['may', 5],
  ['jun', 6],
  ['juin', 6],
  ['jul', 7],
  ['juil', 7],
  ['aug', 8],
  ['aou', 8],
  ['ago', 8],
  ['sep', 9],
  ['oct', 10],
  ['okt', 10],
  ['nov', 11],
  ['dec', 12],
  ['dez', 12],
  ['dic', 12],
];

/** 1 to 12, or null when the word is no month. */
export function monthOf(word: string): number | null {
  const plain = plainWords(word);
  return BEGINNINGS.find(([beginning]) => plain.startsWith(beginning))?.[1] ?? null;
}
