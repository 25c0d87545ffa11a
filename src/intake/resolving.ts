/** Settles what a name means: by the keeper's answer first, else by the books of names. */
import { type Problem, problem } from '../husbandry/problems.ts';
import type { Named, NameMatch } from './names/name-book.ts';
import { quote } from './quoting.ts';

export type Resolved<T extends Named> =
  | { readonly kind: 'found'; readonly match: NameMatch<T> }
  | { readonly kind: 'left out' }
  | { readonly kind: 'unknown' };

type Answers = Readonly<Record<string, string>>;

/** An own property of the answers, whatever the text: '__proto__' is only a word. */
const answerTo = (answers: Answers, text: string): string | undefined =>
  Object.hasOwn(answers, text) ? answers[text] : undefined;

export function resolveName<T extends Named>(
  text: string,
  find: (text: string) => NameMatch<T> | null,
  known: { readonly answers: Answers; readonly items: readonly T[] },
): Resolved<T> {
  const answer = answerTo(known.answers, text);
  if (answer === '') return { kind: 'left out' };
  const item = known.items.find(({ code }) => code === answer);
  if (item) return { kind: 'found', match: { item, how: 'answer', said: null } };
  const match = text === '' ? null : find(text);
  return match ? { kind: 'found', match } : { kind: 'unknown' };
}

/** Answers that name nothing we know. */
export const wrongAnswers = (answers: Answers, items: readonly Named[]): Problem[] =>
  Object.entries(answers)
    .filter(([, answer]) => answer !== '' && !items.some(({ code }) => code === answer))
    .map(([text, answer]) =>
      problem('answer-unknown', `The answer ${quote(answer)} for ${quote(text)} is not a known code.`),
    );
