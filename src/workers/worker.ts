/** Answers questions in a thread of its own, so that pages stay quick; how far it is it tells meanwhile. */

import { constants, getPriority, setPriority } from 'node:os';
import { parentPort } from 'node:worker_threads';
import { answerTo, type Question } from '../actions/index.ts';
import type { Said } from './said.ts';

/** Pages come first: only Linux ranks a thread by itself, elsewhere this would slow the pages too. */
const NICER = constants.priority.PRIORITY_BELOW_NORMAL;
if (process.platform === 'linux')
  setPriority(Math.min(constants.priority.PRIORITY_LOW, getPriority() + NICER));

const say = (said: Said): void => parentPort?.postMessage(said);

parentPort?.on('message', async (question: Question) =>
  say({ answer: await answerTo(question, (progress) => say({ progress })) }),
);
