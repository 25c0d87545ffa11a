/** One task of the plan's benchmark in a process of its own: the task comes as JSON, words on its progress go out. */
import type { Planner } from './plan-arm.ts';
import { playForesight, playPlan, playRules, type Task } from './plan-tasks.ts';

/** The compiled planner, as keepers run it. */
async function compiledPlanner(): Promise<Planner> {
  const door = new URL('../../dist/src/husbandry/plan/index.js', import.meta.url).href;
  const { makePlan } = (await import(door)) as { makePlan?: Planner };
  if (!makePlan) throw new Error('the compiled program has no planner: run npm run build first');
  return makePlan;
}

/** Ends with whoever started it. */
process.once('disconnect', () => process.exit(1));
process.channel?.unref();

const task = JSON.parse(process.argv[2] ?? '') as Task;
const say = (words: string): void => void process.stdout.write(`${words}\n`);
if (task.what === 'rules') await playRules(task);
else if (task.what === 'foresight') await playForesight(task);
else await playPlan(task, await compiledPlanner(), say);
