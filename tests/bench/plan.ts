/**
 * Whether the plan is worth it: `npm run bench:plan -- --rooms 40,150 --worlds 30 --weeks 52 --jobs 2 --keep`. What is played
 * is kept under --into and taken up again; --keep writes the table to tests/proof/results/plan.md. See RATIONALE.md.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Options, optionsFrom } from './plan-options.ts';
import { doAll } from './plan-pool.ts';
import { notes, type Played, roomTable, summary, WEIGHTS } from './plan-report.ts';
import { foresightKept, planKept, rulesKept, type Task, type World } from './plan-tasks.ts';
import { firstTuning, laterTuning, tunedOn, tuningWorlds } from './plan-tuning.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const options = optionsFrom(process.argv.slice(2));
const say = (words: string): void => console.error(words);
const run = (name: string, tasks: readonly Task[]) => doAll(name, tasks, { jobs: options.jobs, say });

const worldsOf = (room: string): World[] =>
  Array.from({ length: options.worlds[room] as number }, (_, n) => ({ ...options, room, seed: n + 1 })).map(
    bare,
  );
const tuningOf = (room: string): World[] =>
  tuningWorlds(bare({ ...options, room, seed: 0 }), options.tuning[room] as number);

function bare({ room, seed, weeks, into }: World): World {
  return { room, seed, weeks, into };
}

const program = options.withPlan ? options.program : null;
const inAll = (tasks: (room: string) => readonly Task[]): Task[] => options.rooms.flatMap(tasks);

const foresightTask = (world: World, rules: readonly number[], weight: number) =>
  ({ ...world, what: 'foresight', program, rules, weight, budget: options.search }) as const;

say(`kept in ${options.into}`);
await run(
  'tuning, all rules',
  inAll((room) => firstTuning(tuningOf(room))),
);
await run(
  'tuning, the better rules',
  inAll((room) => laterTuning(tuningOf(room))),
);
const tuned = new Map(options.rooms.map((room) => [room, tunedOn(tuningOf(room))]));
const shown = (room: string): number[] => [
  ...new Set([...(tuned.get(room)?.frontier ?? []), ...Object.values(tuned.get(room)?.byKind ?? {}).flat()]),
];
await run(
  'rules',
  inAll((room) => worldsOf(room).map((world) => ({ ...world, what: 'rules', rules: shown(room) }))),
);
if (program !== null)
  await run(
    'plan',
    inAll((room) =>
      worldsOf(room).map((world) => ({
        ...world,
        what: 'plan',
        program,
        asked: { weeks: options.ahead, effort: options.effort },
      })),
    ),
  );
await run(
  'foresight',
  inAll((room) =>
    worldsOf(room).flatMap((world) => WEIGHTS.map((weight) => foresightTask(world, shown(room), weight))),
  ),
);

function playedIn(room: string): Played {
  const worlds = worldsOf(room);
  const foreseen = WEIGHTS.map((weight) =>
    worlds.map((world) => foresightKept(foresightTask(world, shown(room), weight))!),
  );
  const plans = program === null ? null : worlds.map((world) => planKept(world, program)!);
  return {
    room,
    tuned: tuned.get(room)!,
    rules: worlds.map(rulesKept),
    plan: plans?.map(({ score }) => score!) ?? null,
    tookMs: plans?.flatMap(({ tookMs }) => tookMs) ?? [],
    foresight: foreseen.map((found) => found.map(({ score }) => score)),
    foresightAtQuarter: foreseen.map((found) => found.map(({ atQuarter }) => atQuarter)),
  };
}

function reportOf({ weeks, ahead, effort, search, tuning }: Options): string {
  const rooms = options.rooms.map(playedIn);
  const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], {
    cwd: ROOT,
    encoding: 'utf8',
  }).trim();
  return `# What the plan is worth

Commit ${commit}; ${weeks} weeks with a new plan of ${ahead} weeks (${effort}) every Sunday; rules tuned on ${rooms.map(({ room }) => tuning[room]).join(', ')} other worlds. Why it is measured so stands in
\`tests/bench/RATIONALE.md\`. Intervals are 95 %, worlds drawn again with all that was played in them.

${summary(rooms)}

${notes(search)}

${rooms.map(roomTable).join('\n')}`;
}

const report = reportOf(options);
process.stdout.write(report);
if (options.keep) {
  mkdirSync(`${ROOT}tests/proof/results`, { recursive: true });
  writeFileSync(`${ROOT}tests/proof/results/plan.md`, report);
}
