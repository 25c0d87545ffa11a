/** A program of its own that writes rooms until it is killed, and says each one only after it is written. */
import { writeSync } from 'node:fs';
import { addRoom, nowIn } from '../../src/actions/index.ts';
import { openStore } from '../../src/store/index.ts';
import { smallFacts } from './small-facts.ts';

const opened = await openStore({ place: { url: process.argv[2]! }, moment: new Date().toISOString() });
if (!opened.ok) throw new Error(opened.problem.sentence);
const clock = () => nowIn('UTC', new Date());
const context = { store: opened.value, facts: smallFacts, clock };
for (;;) {
  const done = await addRoom(context, { name: 'Room', dayTempC: 25, nightTempC: 20 });
  if (!done.ok) throw new Error(done.problem.sentence);
  writeSync(1, `${done.value.reply.room}\n`);
}
