/** Answers Sunday questions in a thread of its own, so that pages stay quick. */

import { parentPort } from 'node:worker_threads';
import type { SundayQuestion } from '../actions/index.ts';
import { sundayCheck } from '../husbandry/supply/index.ts';

parentPort?.on('message', ({ snapshot, options }: SundayQuestion) =>
  parentPort?.postMessage(sundayCheck(snapshot, options)),
);
