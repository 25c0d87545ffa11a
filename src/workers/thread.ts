/** One thread, one question at a time: told how far it is, stopped when it takes too long or nobody wants it any more. */

import { on } from 'node:events';
import { setImmediate as breathe } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import {
  type Answering,
  type Answers,
  answerTo,
  type Question,
  type Subject,
  type UnderWay,
} from '../actions/index.ts';
import type { PlanProgress } from '../husbandry/plan/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { CANCELLED, oneByOne } from './one-by-one.ts';
import type { Said } from './said.ts';
import { packed } from './sent.ts';

export interface Patience {
  readonly longestMs: number;
  /** Said when it took longer. */
  readonly tooLong: string;
  /** Whether the same question of a newer room ends it. */
  readonly forNewer: boolean;
}

export interface AnswerThread extends UnderWay {
  readonly answering: Answering;
  readonly close: () => Promise<void>;
}

type Tell = (progress: PlanProgress) => void;

/** Answers one question; `stop` ends that, where it can be ended. */
interface Desk {
  readonly answer: <S extends Subject>(question: Question<S>, tell: Tell) => Promise<Result<Answers[S]>>;
  readonly stop: () => boolean;
  readonly close: () => Promise<void>;
}

/** Run from source, where a thread cannot load it, all is answered in place. */
export function answerThread(patience: Patience): AnswerThread {
  const desk = import.meta.url.endsWith('.js') ? workerDesk(patience) : HERE;
  let told: { readonly name: string; readonly progress: PlanProgress } | null = null;
  const answering: Answering = async (question) => {
    const { name } = question;
    const answer = desk.answer(question, (progress) => {
      told = { name, progress };
    });
    return answer.finally(() => {
      told = null;
    });
  };
  const line = oneByOne(answering, { stop: desk.stop, forNewer: patience.forNewer });
  return {
    ...line,
    progressOf: (name) => (told?.name === name ? told.progress : null),
    close: desk.close,
  };
}

/** Lets other requests through first. */
const HERE: Desk = {
  answer: async (question, tell) => {
    await breathe();
    return ok(await answerTo(question, tell));
  },
  stop: () => false,
  close: async () => undefined,
};

function workerDesk(patience: Patience): Desk {
  let worker: Worker | null = null;
  /** The room the thread was sent last. */
  let room: Snapshot | null = null;
  let stopping = new AbortController();
  const close = async (): Promise<void> => {
    const last = worker;
    worker = null;
    room = null;
    await last?.terminate();
  };
  return {
    answer: async <S extends Subject>(question: Question<S>, tell: Tell) => {
      worker ??= newWorker();
      stopping = new AbortController();
      worker.postMessage(packed(question, room));
      room = question.snapshot;
      const answer = await answerFrom(worker, { tell, patience, stopped: stopping.signal }).catch(
        async (error: unknown) => {
          await close();
          throw error;
        },
      );
      if (!answer.ok) await close();
      // A thread answers the question that it was sent.
      return answer as Result<Answers[S]>;
    },
    stop: () => {
      stopping.abort();
      return true;
    },
    close,
  };
}

/** A thread that does not keep the program alive. */
function newWorker(): Worker {
  const worker = new Worker(new URL('./worker.js', import.meta.url));
  worker.unref();
  return worker;
}

interface Hearing {
  readonly tell: Tell;
  readonly patience: Patience;
  readonly stopped: AbortSignal;
}

/** The answer it comes to; an error there is thrown here, too long a wait or a stop is a Problem. */
async function answerFrom(
  worker: Worker,
  { tell, patience, stopped }: Hearing,
): Promise<Result<Answers[Subject]>> {
  const late = AbortSignal.timeout(patience.longestMs);
  try {
    for await (const [said] of on(worker, 'message', { signal: AbortSignal.any([stopped, late]) })) {
      const heard = said as Said;
      if ('answer' in heard) return ok(heard.answer);
      tell(heard.progress);
    }
  } catch (error) {
    const amiss = amissWith({ stopped, late }, patience);
    if (amiss === null) throw error;
    return err(amiss);
  }
  throw new Error('the thread ended without an answer');
}

const amissWith = (
  { stopped, late }: { readonly stopped: AbortSignal; readonly late: AbortSignal },
  { tooLong }: Patience,
): Problem | null => {
  if (stopped.aborted) return CANCELLED;
  return late.aborted ? problem('too-long', tooLong) : null;
};
