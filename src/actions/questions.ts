/** What may be asked of a room, and how each question is answered, here or in a thread: values in, values out. */
import { ok, type Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import {
  type CoverAnswer,
  type CoverOptions,
  sundayCheck,
  type WeeksAnswer,
  weeksAhead,
} from '../husbandry/supply/index.ts';

/** Questions by subject, with what each is answered. */
export interface Answers {
  readonly sunday: CoverAnswer;
  readonly weeks: WeeksAnswer;
}
export type Subject = keyof Answers;

export interface Question<S extends Subject = Subject> {
  readonly subject: S;
  /** Same question, same name. */
  readonly name: string;
  readonly snapshot: Snapshot;
  readonly options: CoverOptions;
}

/** How an answer is computed: here, or in a worker. */
export type Answering = <S extends Subject>(question: Question<S>) => Promise<Result<Answers[S]>>;

const ANSWERS: { readonly [S in Subject]: (snapshot: Snapshot, options: CoverOptions) => Answers[S] } = {
  sunday: sundayCheck,
  weeks: weeksAhead,
};

/** The answer to a question. */
export const answerTo = <S extends Subject>({ subject, snapshot, options }: Question<S>): Answers[S] =>
  ANSWERS[subject](snapshot, options);

/** Computes where it is asked. */
export const answerHere: Answering = async (question) => ok(answerTo(question));
