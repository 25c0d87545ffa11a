/** Four threads for what takes long: what a page waits for, what the week asks, colonies, and the plan wait for nobody but their own kind. */
import type { Answering, Subject, UnderWay } from '../actions/index.ts';
import { answerThread } from './thread.ts';

export interface AnswerPool {
  readonly answering: Answering;
  readonly underWay: UnderWay;
  readonly close: () => Promise<void>;
}

const CHECK = {
  longestMs: 60_000,
  tooLong: 'The check took longer than a minute and was stopped. Ask again.',
  forNewer: false,
};
const PLAN = {
  longestMs: 120_000,
  tooLong: 'The plan took longer than two minutes and was stopped. Ask for fewer weeks, or ask again.',
  forNewer: true,
};

export function answerPool(): AnswerPool {
  const pages = answerThread(CHECK);
  const quick = answerThread(CHECK);
  const colonies = answerThread(CHECK);
  const plans = answerThread(PLAN);
  const threads = [pages, quick, colonies, plans];
  const own: Partial<Record<Subject, typeof quick>> = {
    shelves: pages,
    cups: pages,
    away: pages,
    'bin today': pages,
    used: pages,
    'bins go': pages,
    'colony start': colonies,
    'largest harvests': colonies,
    bulk: colonies,
    plan: plans,
  };
  return {
    answering: (question) => (own[question.subject] ?? quick).answering(question),
    underWay: {
      progressOf: (name) =>
        threads.reduce<ReturnType<UnderWay['progressOf']>>(
          (found, thread) => found ?? thread.progressOf(name),
          null,
        ),
      cancel: (name) => threads.some((thread) => thread.cancel(name)),
    },
    close: async () => {
      await Promise.all(threads.map((thread) => thread.close()));
    },
  };
}
