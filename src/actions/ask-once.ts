/** Asks what a page cannot do without and nobody wants later: worked out in a thread, once for a room as it was read. */
import type { Snapshot } from '../husbandry/snapshot.ts';
import { type Answering, type Answers, answerHere, answerTo, nameOf, type Options } from './questions.ts';

/** Subjects that are asked so. */
type Once = 'shelves' | 'cups' | 'bin today' | 'used' | 'away';

interface AskingOnce<S extends Once> {
  readonly options: Options[S];
  readonly snapshot: Snapshot;
  readonly answering?: Answering;
}

type Told<S extends Once> = NonNullable<Answers[S]['found']>;

const asked = new WeakMap<Snapshot, Map<string, Promise<unknown>>>();

/** Kept with the very snapshot, as long as that is. What is asked about must be in the room. */
export async function askOnce<S extends Once>(subject: S, asking: AskingOnce<S>): Promise<Told<S>> {
  const answers = asked.get(asking.snapshot) ?? new Map<string, Promise<unknown>>();
  asked.set(asking.snapshot, answers);
  const name = nameOf(subject, asking.options);
  // A name tells the subject, and of one subject there is one kind of answer.
  const before = answers.get(name) as Promise<Told<S>> | undefined;
  if (before !== undefined) return before;
  const answer = answered(subject, name, asking);
  answers.set(name, answer);
  answer.catch(() => answers.delete(name));
  return answer;
}

/** Where the thread has too much to do, or answers of a newer room, it is worked out here. */
async function answered<S extends Once>(
  subject: S,
  name: string,
  { answering = answerHere, ...asking }: AskingOnce<S>,
): Promise<Told<S>> {
  const question = { subject, name, ...asking };
  const answer = await answering(question);
  const isOfThisRoom = answer.ok && answer.value.revision === asking.snapshot.revision;
  const { found } = isOfThisRoom ? answer.value : await answerTo(question);
  if (found === null) throw new Error(`nothing is to be found of ${name}`);
  return found;
}
