/** What is played of one world, each kept in a file of its own, so that a benchmark of hours can be taken up again. */
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PlanQuestion } from '../../src/husbandry/plan/index.ts';
import { type Planner, planning } from './plan-arm.ts';
import { foresee } from './plan-rules/foresight.ts';
import { GRID } from './plan-rules/grid.ts';
import { packsOf } from './plan-rules/packs.ts';
import { play } from './plan-rules/play.ts';
import { pointOf } from './plan-rules/prices.ts';
import { buyerBy, type Rule } from './plan-rules/rules.ts';
import { houseOf, live } from './plan-worlds/house.ts';
import { logOf } from './plan-worlds/household.ts';
import type { Steps } from './plan-worlds/log.ts';
import { roomNamed } from './plan-worlds/rooms.ts';
import { type Score, scoreOf } from './plan-worlds/score.ts';

export interface World {
  readonly room: string;
  readonly seed: number;
  readonly weeks: number;
  /** Folder of what is kept. */
  readonly into: string;
}

export type Task = World &
  (
    | { readonly what: 'rules'; readonly rules: readonly number[] }
    | {
        readonly what: 'plan';
        readonly program: string;
        readonly asked: Pick<PlanQuestion, 'weeks' | 'effort'>;
      }
    | {
        readonly what: 'foresight';
        readonly program: string | null;
        readonly rules: readonly number[];
        readonly weight: number;
        readonly budget: number;
      }
  );

/** Scores by place in the grid. */
export type RuleScores = Readonly<Record<number, Score>>;
export interface PlanKept {
  readonly steps: readonly Steps[];
  /** Milliseconds each plan took. */
  readonly tookMs: readonly number[];
  readonly score: Score | null;
}
export interface ForesightKept {
  readonly score: Score;
  readonly atQuarter: Score;
}

const fileOf = ({ into, room, weeks, seed }: World, name: string): string =>
  join(into, `${room}-${weeks}w-${seed}-${name}.json`);

function read<T>(world: World, name: string): T | null {
  const file = fileOf(world, name);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as T) : null;
}

/** Written beside and renamed, so that a file is whole or not there. */
function keep(world: World, name: string, kept: unknown): void {
  mkdirSync(world.into, { recursive: true });
  const file = fileOf(world, name);
  writeFileSync(`${file}.part`, JSON.stringify(kept));
  renameSync(`${file}.part`, file);
}

export const rulesKept = (world: World): RuleScores => read<RuleScores>(world, 'rules') ?? {};
export const planKept = (world: World, program: string): PlanKept | null => read(world, `plan-${program}`);

const foresightName = ({ weight, budget, program }: Extract<Task, { what: 'foresight' }>): string =>
  `foresight-${weight}-${budget}-${program ?? 'alone'}`;
export const foresightKept = (task: Extract<Task, { what: 'foresight' }>): ForesightKept | null =>
  read(task, foresightName(task));

/** Whether nothing of a task is left to do. */
export function isDone(task: Task): boolean {
  if (task.what === 'plan') return planKept(task, task.program)?.score != null;
  if (task.what === 'foresight') return foresightKept(task) !== null;
  const kept = rulesKept(task);
  return task.rules.every((rule) => kept[rule] !== undefined);
}

const ruleAt = (rule: number): Rule => GRID[rule] as Rule;

export async function playRules(task: Extract<Task, { what: 'rules' }>): Promise<void> {
  const kept: Record<number, Score> = { ...rulesKept(task) };
  for (const rule of task.rules)
    kept[rule] ??= (await play(roomNamed(task.room), task, buyerBy(ruleAt(rule)))).score;
  keep(task, 'rules', kept);
}

/** Plays the plan week by week, keeping each; what was planned before is done again without planning. */
export async function playPlan(
  task: Extract<Task, { what: 'plan' }>,
  planner: Planner,
  say: (words: string) => void,
): Promise<void> {
  const before = planKept(task, task.program);
  const steps = [...(before?.steps ?? [])];
  const tookMs = [...(before?.tookMs ?? [])];
  const house = houseOf(roomNamed(task.room), task);
  for (const each of steps) live(house, each);
  const buyer = planning(planner, task.asked);
  while (steps.length < task.weeks) {
    const began = performance.now();
    const now = await buyer(logOf(house));
    tookMs.push(Math.round(performance.now() - began));
    steps.push(now);
    live(house, now);
    keep(task, `plan-${task.program}`, { steps, tookMs, score: null });
    say(`week ${steps.length} of ${task.weeks}, ${tookMs[tookMs.length - 1]} ms`);
  }
  keep(task, `plan-${task.program}`, { steps, tookMs, score: scoreOf(house) });
}

/** Rules from which the search with foresight begins, beside the plan. */
const STARTS = 3;

export async function playForesight(task: Extract<Task, { what: 'foresight' }>): Promise<void> {
  const room = roomNamed(task.room);
  const scores = rulesKept(task);
  const sum = (rule: number) => {
    const { cents, harm } = pointOf(scores[rule] as Score);
    return cents + task.weight * harm;
  };
  const best = task.rules.toSorted((a, b) => sum(a) - sum(b)).slice(0, STARTS);
  const starts = [];
  for (const rule of best) starts.push(packsOf((await play(room, task, buyerBy(ruleAt(rule)))).steps));
  const plan = task.program === null ? null : planKept(task, task.program);
  if (plan) starts.push(packsOf(plan.steps));
  const { score, atQuarter } = foresee(room, starts, {
    year: task,
    budget: task.budget,
    weight: task.weight,
  });
  keep(task, foresightName(task), { score, atQuarter });
}
