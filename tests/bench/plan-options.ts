/** What the plan's benchmark is asked for on the command line, and the marks under which its parts are kept. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { PlanQuestion } from '../../src/husbandry/plan/index.ts';
import { ROOMS, roomNamed } from './plan-worlds/rooms.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

type Effort = NonNullable<PlanQuestion['effort']>;

export interface Options {
  readonly rooms: readonly string[];
  /** Worlds played by room, and worlds the rules are tuned on; no world is both. */
  readonly worlds: Counts;
  readonly tuning: Counts;
  readonly weeks: number;
  readonly jobs: number;
  /** Weeks each plan looks ahead. */
  readonly ahead: number;
  /** whole: as keepers get it; quick: by the rule and its search alone. */
  readonly effort: Effort;
  /** Changes tried with foresight. */
  readonly search: number;
  readonly withPlan: boolean;
  readonly keep: boolean;
  /** Folder of what is kept between runs, for these worlds and rules. */
  readonly into: string;
  /** Mark of the program that plans. */
  readonly program: string;
}

/** How many of something by room. */
export type Counts = Readonly<Record<string, number>>;

const MOST_JOBS = 2;
const MARK_LENGTH = 10;

export function optionsFrom(args: readonly string[]): Options {
  const { values } = parseArgs({
    args: [...args],
    options: {
      rooms: { type: 'string', default: ROOMS.map(({ name }) => name).join(',') },
      worlds: { type: 'string', default: '30' },
      tuning: { type: 'string', default: '30' },
      weeks: { type: 'string', default: '52' },
      jobs: { type: 'string', default: '2' },
      ahead: { type: 'string', default: '12' },
      effort: { type: 'string', default: 'whole' },
      search: { type: 'string', default: '4000' },
      into: { type: 'string', default: join(tmpdir(), 'preylarder-bench-plan') },
      'without-plan': { type: 'boolean', default: false },
      keep: { type: 'boolean', default: false },
    },
  });
  const rooms = values.rooms.split(',').map((name) => roomNamed(name).name);
  return {
    rooms,
    worlds: byRoom('worlds', values.worlds, rooms),
    tuning: byRoom('tuning', values.tuning, rooms),
    weeks: whole('weeks', values.weeks),
    jobs: Math.min(MOST_JOBS, whole('jobs', values.jobs)),
    ahead: whole('ahead', values.ahead),
    effort: effortOf(values.effort),
    search: whole('search', values.search),
    withPlan: !values['without-plan'],
    keep: values.keep,
    into: join(values.into, markOf(['tests/bench/plan-worlds', 'tests/bench/plan-rules'])),
    program: `${values.ahead}w-${values.effort}-${markOf(['src/husbandry', 'src/maths', 'src/facts'], 'tests/bench/plan-arm.ts', 'tests/bench/plan-market.ts')}`,
  };
}

function effortOf(given: string): Effort {
  if (given === 'whole' || given === 'quick') return given;
  throw new Error(`--effort ${given}: whole or quick is wanted`);
}

/** One number for all rooms, or one for each: `30` or `40:30,1500:4`. */
function byRoom(name: string, given: string, rooms: readonly string[]): Counts {
  if (!given.includes(':')) return Object.fromEntries(rooms.map((room) => [room, whole(name, given)]));
  const counts = new Map(given.split(',').map((each) => each.split(':') as [string, string]));
  return Object.fromEntries(
    rooms.map((room) => {
      const count = counts.get(room);
      if (count === undefined) throw new Error(`--${name} ${given}: a number for room ${room} is wanted`);
      return [room, whole(name, count)];
    }),
  );
}

function whole(name: string, given: string): number {
  const n = Number(given);
  if (!Number.isInteger(n) || n < 1)
    throw new Error(`--${name} ${given}: a whole number from 1 on is wanted`);
  return n;
}

/** First digits of the hash of all files in some folders: what was kept for another version is not taken up. */
function markOf(folders: readonly string[], ...files: readonly string[]): string {
  const hash = createHash('sha256');
  const inside = folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name)),
  );
  for (const file of [...inside.sort(), ...files.map((name) => join(ROOT, name))])
    hash.update(readFileSync(file));
  return hash.digest('hex').slice(0, MARK_LENGTH);
}
