/** Tasks of the plan's benchmark in child processes, a few at a time; those done before are passed over. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { isDone, type Task } from './plan-tasks.ts';

const CHILD = fileURLToPath(new URL('plan-once.ts', import.meta.url));

export type Say = (words: string) => void;

/** Does what is left of a list of tasks; fails when one of them does. */
export async function doAll(
  name: string,
  tasks: readonly Task[],
  { jobs, say }: { jobs: number; say: Say },
): Promise<void> {
  const left = tasks.filter((task) => !isDone(task));
  let done = tasks.length - left.length;
  if (left.length > 0) say(`${name}: ${done} of ${tasks.length} kept from before`);
  const worker = async () => {
    for (let task = left.shift(); task; task = left.shift()) {
      await inChild(task, (words) => say(`${name}, room ${task?.room}, world ${task?.seed}: ${words}`));
      done += 1;
      say(`${name}: ${done} of ${tasks.length} (room ${task.room}, world ${task.seed})`);
    }
  };
  await Promise.all(Array.from({ length: jobs }, worker));
}

function inChild(task: Task, say: Say): Promise<void> {
  const child = spawn(process.execPath, [...process.execArgv, CHILD, JSON.stringify(task)], {
    stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
  });
  child.stdout?.setEncoding('utf8').on('data', (words: string) => say(words.trim()));
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (code) =>
      code === 0
        ? resolve()
        : reject(new Error(`${task.what} of room ${task.room}, world ${task.seed}, ended with ${code}`)),
    );
  });
}
