/** One question under way, the others in a queue: the same question joins, that of a newer room takes the place of the waiting. */

import type { Answering, Answers, Question, Subject } from '../actions/index.ts';
import { noMarket, tooLateToday } from '../husbandry/orders/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, type Result } from '../husbandry/result.ts';

type Answer = Result<Answers[Subject]>;

interface Job {
  question: Question;
  /** The same question of a newer room, begun in its place: all get its answer. */
  successor: Job | null;
  readonly answer: Promise<Answer>;
  readonly settle: (answer: Answer | Promise<Answer>) => void;
}

/** Questions that may wait; one more is told to come again. */
const MOST_WAITING = 4;
const BUSY = problem('busy', 'Several checks are under way already. Ask again in a moment.');

export const CANCELLED = problem('cancelled', 'It was stopped before it was done.');

export interface OneByOne {
  readonly answering: Answering;
  /** Whoever waits for this question is told at once that it was stopped; false where nobody does, or nothing can stop it. */
  readonly cancel: (name: string) => boolean;
}

interface Ending {
  /** Ends the question under way, which then answers that it was; false where nothing can. */
  readonly stop: () => boolean;
  /** Whether the same question of a newer room ends it: what takes long is not worked out for a room that is past. */
  readonly forNewer: boolean;
}

/** The same answering, never more than one at a time. */
export function oneByOne(answering: Answering, { stop, forNewer }: Ending): OneByOne {
  let running: Job | null = null;
  const waiting: Job[] = [];
  const run = (job: Job): void => {
    running = job;
    const answer = answering(job.question);
    job.settle(answer.then((found) => job.successor?.answer ?? found));
    const next = (): void => {
      running = null;
      const following = waiting.shift();
      if (following !== undefined) run(following);
    };
    answer.then(next, next);
  };
  const isOutdated = ({ question: old }: Job, question: Question): boolean =>
    forNewer && old.name === question.name && isNewer(question, old);
  const answerOf = (question: Question): Promise<Answer> => {
    if (running !== null && isSame(running.question, question)) return running.answer;
    const before = waiting.find((job) => isOfOneDay(job.question, question));
    if (before !== undefined) {
      if (isNewer(question, before.question)) before.question = question;
      return before.answer;
    }
    if (waiting.length >= MOST_WAITING) return Promise.resolve(err(BUSY));
    const job = jobOf(question);
    if (running === null) run(job);
    else if (isOutdated(running, question) && stop()) {
      running.successor = job;
      waiting.unshift(job);
    } else waiting.push(job);
    return job.answer;
  };
  const cancel = (name: string): boolean => {
    const at = waiting.findIndex((job) => job.question.name === name);
    if (at >= 0) waiting.splice(at, 1)[0]?.settle(err(CANCELLED));
    return (running?.question.name === name && stop()) || at >= 0;
  };
  // A name tells the subject: who asks of one subject is answered of it.
  return { answering: answerOf as Answering, cancel };
}

function jobOf(question: Question): Job {
  const { promise, resolve } = deferred();
  return { question, successor: null, answer: promise, settle: resolve };
}

function deferred() {
  let resolve: (answer: Answer | Promise<Answer>) => void = () => undefined;
  const promise = new Promise<Answer>((settle) => {
    resolve = settle;
  });
  return { promise, resolve };
}

/** How many suppliers take no more orders today: grows as their hours pass, while the room stays as it was. */
const tooLate = ({ snapshot: { market = noMarket, today } }: Question): number =>
  tooLateToday(market.suppliers, today).length;

/** Pages ask of past evenings too. */
const isOfOneDay = (a: Question, b: Question): boolean =>
  a.name === b.name && a.snapshot.today === b.snapshot.today;

const isSame = (a: Question, b: Question): boolean =>
  isOfOneDay(a, b) && a.snapshot.revision === b.snapshot.revision && tooLate(a) === tooLate(b);

const isNewer = (a: Question, b: Question): boolean =>
  a.snapshot.revision === b.snapshot.revision
    ? tooLate(a) > tooLate(b)
    : a.snapshot.revision > b.snapshot.revision;
