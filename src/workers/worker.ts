/** Answers questions in a thread of its own, so that pages stay quick; how far it is it tells meanwhile. */

import { parentPort } from 'node:worker_threads';
import { answerTo } from '../actions/index.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import type { Said } from './said.ts';
import { type Sent, unpacked } from './sent.ts';

const say = (said: Said): void => parentPort?.postMessage(said);
let last: Snapshot | null = null;

parentPort?.on('message', async (sent: Sent) => {
  const question = unpacked(sent, last);
  last = question.snapshot;
  say({ answer: await answerTo(question, (progress) => say({ progress })) });
});
