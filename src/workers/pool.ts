/** Two threads for what takes long, one for colonies alone; run from source, where threads cannot load it, all is answered in place. */

import { once } from 'node:events';
import { setImmediate as breathe, setTimeout as pause } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { type Answering, type Answers, answerHere, type Question, type Subject } from '../actions/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { oneByOne } from './one-by-one.ts';

const LONGEST_MS = 60_000;

export interface AnswerPool {
  readonly answering: Answering;
  readonly close: () => Promise<void>;
}

/** Colonies are lived through for seconds: what the week asks does not wait for them. */
const SLOW: ReadonlySet<Subject> = new Set(['colony start', 'largest harvests']);

export function answerPool(): AnswerPool {
  const [quick, slow] = [answerThread(), answerThread()];
  return {
    answering: (question) => (SLOW.has(question.subject) ? slow : quick).answering(question),
    close: async () => {
      await Promise.all([quick.close(), slow.close()]);
    },
  };
}

function answerThread(): AnswerPool {
  if (!import.meta.url.endsWith('.js')) return { answering: oneByOne(inPlace), close: async () => undefined };
  let worker: Worker | null = null;
  const dismiss = async (): Promise<void> => {
    const last = worker;
    worker = null;
    await last?.terminate();
  };
  const answering: Answering = async <S extends Subject>(question: Question<S>) => {
    worker ??= newWorker();
    worker.postMessage(question);
    const answer = await firstOf<Answers[S]>(worker).catch(async (error: unknown) => {
      await dismiss();
      throw error;
    });
    if (!answer.ok) await dismiss();
    return answer;
  };
  return { answering: oneByOne(answering), close: dismiss };
}

/** A thread that does not keep the program alive. */
function newWorker(): Worker {
  const worker = new Worker(new URL('./worker.js', import.meta.url));
  worker.unref();
  return worker;
}

/** Its next message; an error there is thrown here, and too long a wait is a Problem. */
async function firstOf<T>(worker: Worker): Promise<Result<T>> {
  const patience = new AbortController();
  const message = once(worker, 'message', { signal: patience.signal });
  message.catch(() => undefined);
  const late = pause(LONGEST_MS, null, { signal: patience.signal, ref: false }).catch(() => null);
  try {
    const found = await Promise.race([message, late]);
    return found === null ? err(TOO_LONG) : ok(found[0] as T);
  } finally {
    patience.abort();
  }
}

const TOO_LONG = problem('too-long', 'The check took longer than a minute and was stopped. Ask again.');

/** Lets other requests through first. */
const inPlace: Answering = async (question) => {
  await breathe();
  return answerHere(question);
};
