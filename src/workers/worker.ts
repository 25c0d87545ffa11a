/** Answers questions in a thread of its own, so that pages stay quick; how far it is it tells meanwhile. */

import { parentPort } from 'node:worker_threads';
import { answerTo, type Question } from '../actions/index.ts';
import type { Said } from './said.ts';

const say = (said: Said): void => parentPort?.postMessage(said);

parentPort?.on('message', async (question: Question) =>
  say({ answer: await answerTo(question, (progress) => say({ progress })) }),
);
