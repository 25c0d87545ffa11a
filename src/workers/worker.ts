/** Answers questions in a thread of its own, so that pages stay quick. */

import { parentPort } from 'node:worker_threads';
import { answerTo, type Question } from '../actions/index.ts';

parentPort?.on('message', async (question: Question) => parentPort?.postMessage(await answerTo(question)));
