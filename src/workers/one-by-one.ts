/** One question under way and one waiting: the same question joins, a newer one takes the place of the waiting. */

import type { Answering, SundayQuestion } from '../actions/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, type Result } from '../husbandry/result.ts';
import type { CoverAnswer } from '../husbandry/supply/index.ts';

type Answer = Result<CoverAnswer>;

interface Job {
  question: SundayQuestion;
  readonly answer: Promise<Answer>;
  readonly settle: (answer: Answer | Promise<Answer>) => void;
}

const BUSY = problem('busy', 'Two checks are under way already. Ask again in a moment.');

/** The same answering, never more than one at a time. */
export function oneByOne(answering: Answering): Answering {
  let running: Job | null = null;
  let waiting: Job | null = null;
  const run = (job: Job): void => {
    running = job;
    const answer = answering(job.question);
    job.settle(answer);
    const next = (): void => {
      running = null;
      if (waiting === null) return;
      const following = waiting;
      waiting = null;
      run(following);
    };
    answer.then(next, next);
  };
  return (question) => {
    if (running === null) {
      const job = jobOf(question);
      run(job);
      return job.answer;
    }
    if (isSame(running.question, question)) return running.answer;
    if (waiting !== null && waiting.question.name !== question.name) return Promise.resolve(err(BUSY));
    if (waiting === null) waiting = jobOf(question);
    else if (isNewer(question, waiting.question)) waiting.question = question;
    return waiting.answer;
  };
}

function jobOf(question: SundayQuestion): Job {
  const { promise, resolve } = deferred();
  return { question, answer: promise, settle: resolve };
}

function deferred() {
  let resolve: (answer: Answer | Promise<Answer>) => void = () => undefined;
  const promise = new Promise<Answer>((settle) => {
    resolve = settle;
  });
  return { promise, resolve };
}

const isSame = (a: SundayQuestion, b: SundayQuestion): boolean =>
  a.name === b.name && a.snapshot.revision === b.snapshot.revision && a.snapshot.today === b.snapshot.today;

const isNewer = (a: SundayQuestion, b: SundayQuestion): boolean => a.snapshot.revision > b.snapshot.revision;
