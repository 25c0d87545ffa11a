/** The rules tuned to a room on worlds of their own: which are worth playing on, and which make up the frontier. */
import { hullOf, meanOf, near } from './plan-rules/frontier.ts';
import { GRID } from './plan-rules/grid.ts';
import { type Point, pointOf } from './plan-rules/prices.ts';
import type { Rule } from './plan-rules/rules.ts';
import { rulesKept, type Task, type World } from './plan-tasks.ts';
import type { Score } from './plan-worlds/score.ts';

/** Tuning worlds begin here, worlds of the test at 1: no seed is both. */
const FIRST_TUNING_SEED = 100_001;
/** Worlds on which the whole grid is played before most of it is dropped. */
const FIRST_WORLDS = 4;
/** What is dearer than the best by more than this, at every weight of harm, is dropped. */
const DROPPED = 0.06;

export const KINDS_OF_RULE: readonly Rule['rule'][] = ['standing', 'reorder', 'base stock'];
const ALL = GRID.map((_, rule) => rule);

export const tuningWorlds = (world: Omit<World, 'seed'>, count: number): World[] =>
  Array.from({ length: count }, (_, n) => ({ ...world, seed: FIRST_TUNING_SEED + n }));

/** The whole grid on a few worlds. */
export const firstTuning = (worlds: readonly World[]): Task[] =>
  worlds.slice(0, FIRST_WORLDS).map((world) => ({ ...world, what: 'rules', rules: ALL }));

/** What is left of it on the others. */
export function laterTuning(worlds: readonly World[]): Task[] {
  const rules = nearBest(worlds.slice(0, FIRST_WORLDS), ALL, DROPPED);
  return worlds.slice(FIRST_WORLDS).map((world) => ({ ...world, what: 'rules', rules }));
}

export interface Tuned {
  /** Rules on the frontier of all, from the least harm to the least cost. */
  readonly frontier: readonly number[];
  /** The frontier of each kind of rule by itself. */
  readonly byKind: Readonly<Record<Rule['rule'], readonly number[]>>;
}

export function tunedOn(worlds: readonly World[]): Tuned {
  const rules = nearBest(worlds.slice(0, FIRST_WORLDS), ALL, DROPPED);
  const hull = (of: readonly number[]) => {
    const points = meansOn(worlds, of);
    return hullOf(points).map((k) => of[k] as number);
  };
  const byKind = KINDS_OF_RULE.map(
    (kind) => [kind, hull(rules.filter((rule) => GRID[rule]?.rule === kind))] as const,
  );
  return { frontier: hull(rules), byKind: Object.fromEntries(byKind) as unknown as Tuned['byKind'] };
}

/** Rules worth playing on: near the best of all, or of their own kind. */
function nearBest(worlds: readonly World[], rules: readonly number[], share: number): number[] {
  const kept = new Set<number>();
  for (const kind of KINDS_OF_RULE) {
    const mine = rules.filter((rule) => GRID[rule]?.rule === kind);
    for (const k of near(meansOn(worlds, mine), share)) kept.add(mine[k] as number);
  }
  return [...kept].sort((a, b) => a - b);
}

function meansOn(worlds: readonly World[], rules: readonly number[]): Point[] {
  const scores = worlds.map(rulesKept);
  return rules.map((rule) => meanOf(scores.map((each) => pointOf(each[rule] as Score))));
}
