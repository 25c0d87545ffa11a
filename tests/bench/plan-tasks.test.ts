/** What the plan's benchmark keeps between runs, and what it makes of it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { PlanAnswer, PlanLine } from '../../src/husbandry/plan/index.ts';
import type { Planner } from './plan-arm.ts';
import { optionsFrom } from './plan-options.ts';
import { comparedIn, type Played, roomTable, summary } from './plan-report.ts';
import {
  foresightKept,
  isDone,
  planKept,
  playForesight,
  playPlan,
  playRules,
  rulesKept,
  type World,
} from './plan-tasks.ts';

let into: string;
beforeEach(() => {
  into = mkdtempSync(join(tmpdir(), 'plan-tasks-'));
});
afterEach(() => rmSync(into, { recursive: true }));

const WEEKS = 6;
const RULES = [0, 200, 500];
const worldOf = (seed: number): World => ({ room: '40', seed, weeks: WEEKS, into });
const silent = () => undefined;

/** Orders a pack of small crickets every week; breaks down in the week said. */
const planner =
  (breaks: number): Planner =>
  async ({ today, revision }) => {
    if (revision === 7 * breaks) throw new Error('broke down');
    const line = { what: 'order', actBy: today, offer: 'barn-cricket-1-4-in', packs: 1 };
    return { lines: [line as PlanLine] } as unknown as PlanAnswer;
  };

describe('a world that was played', () => {
  it('by rules is not played again, and goes on with the rules that are new', async () => {
    const task = { ...worldOf(1), what: 'rules', rules: RULES.slice(0, 2) } as const;
    expect(isDone(task)).toBe(false);
    await playRules(task);
    const before = rulesKept(task);
    expect(isDone(task)).toBe(true);
    expect(isDone({ ...task, rules: RULES })).toBe(false);
    await playRules({ ...task, rules: RULES });
    expect(rulesKept(task)).toMatchObject(before);
    expect(Object.keys(rulesKept(task)).map(Number)).toEqual(RULES);
  });

  it('by the plan is taken up in the week in which it was left', async () => {
    const task = { ...worldOf(1), what: 'plan', program: 'a', asked: { weeks: 12 } } as const;
    await expect(playPlan(task, planner(4), silent)).rejects.toThrow('broke down');
    expect(isDone(task)).toBe(false);
    expect(planKept(task, 'a')?.steps.length).toBe(4);
    await playPlan(task, planner(-1), silent);
    const other = { ...task, program: 'b' };
    await playPlan(other, planner(-1), silent);
    expect(isDone(task)).toBe(true);
    expect(planKept(task, 'a')?.score).toEqual(planKept(task, 'b')?.score);
  });
});

describe('what was played', () => {
  it('makes a table with rules, plan, foresight and what was avoidable', async () => {
    const seeds = [1, 2, 3];
    for (const seed of seeds) {
      await playRules({ ...worldOf(seed), what: 'rules', rules: RULES });
      await playPlan(
        { ...worldOf(seed), what: 'plan', program: 'a', asked: { weeks: 12 } },
        planner(-1),
        silent,
      );
    }
    const foresight = (seed: number) =>
      ({ ...worldOf(seed), what: 'foresight', program: 'a', rules: RULES, weight: 2, budget: 40 }) as const;
    for (const seed of seeds) await playForesight(foresight(seed));
    const found = seeds.map((seed) => foresightKept(foresight(seed))!);
    const played: Played = {
      room: '40',
      tuned: { frontier: RULES, byKind: { standing: [0], reorder: [200], 'base stock': [500] } },
      rules: seeds.map((seed) => rulesKept(worldOf(seed))),
      plan: seeds.map((seed) => planKept(worldOf(seed), 'a')!.score!),
      tookMs: [1000, 3000, 2000],
      foresight: [found.map(({ score }) => score)],
      foresightAtQuarter: [found.map(({ atQuarter }) => atQuarter)],
    };
    const compared = comparedIn(played)!;
    expect(compared.avoidable.low).toBeLessThanOrEqual(compared.avoidable.mean);
    expect(compared.avoidable.mean).toBeLessThanOrEqual(compared.avoidable.high);
    const table = roomTable(played);
    expect(table.split('\n').filter((line) => line.startsWith('| ')).length).toBe(2 + 3 + 1 + 2);
    expect(table).toContain('| the plan |');
    expect(summary([played])).toContain('| 2.0 s |');
    expect(summary([{ ...played, plan: null }])).toContain('no plan played');
  });
});

describe('the command', () => {
  it('reads its options and says what a wrong one should be', () => {
    const options = optionsFrom(['--rooms', '40,colonies', '--worlds', '3', '--jobs', '9']);
    expect(options).toMatchObject({
      rooms: ['40', 'colonies'],
      worlds: { 40: 3, colonies: 3 },
      weeks: 52,
      jobs: 2,
      keep: false,
    });
    expect(optionsFrom(['--rooms', '40,150', '--worlds', '40:9,150:4']).worlds).toEqual({ 40: 9, 150: 4 });
    expect(() => optionsFrom(['--rooms', '40,150', '--worlds', '40:9'])).toThrow(
      '--worlds 40:9: a number for room 150 is wanted',
    );
    expect(() => optionsFrom(['--rooms', '41'])).toThrow(
      'no room "41"; there are 40, 150, 400, 1500, colonies',
    );
    expect(() => optionsFrom(['--worlds', 'many'])).toThrow(
      '--worlds many: a whole number from 1 on is wanted',
    );
  });
});
