/**
 * Solves a plan's problem. The programme decides the near periods in whole numbers and the later ones broken (relax and
 * fix), which proves a bound; its plan and that of the rule are then searched on, lived through as the engine would:
 * the programme hands every head to whom it serves best, which no keeper does. The cheapest as lived is the plan.
 */
import type { Solve, Solved, Solving } from '../../maths/linear-programme.ts';
import { allowedFrom } from './allowed.ts';
import { costOfPlan, flowsOf } from './lived.ts';
import type { Living } from './living.ts';
import type { PlanProblem } from './problem.ts';
import { type Laid, programmeOf } from './programme.ts';
import { type Decisions, decisionsOf, type Proposal } from './proposal.ts';
import { rulePlan } from './rule-plan.ts';
import { searchFrom } from './search-plan.ts';
import type { Solvable } from './solvable.ts';

type Found = Extract<Solved, { columns: Float64Array }>;

export interface PlanSolving {
  /** Periods decided in whole numbers by the programme; 0: none, it only shows the way. */
  readonly whole: number;
  /** Share of the cost by which the programme's plan may be above the best. */
  readonly gap: number;
  readonly seconds: number;
  /** Trials of a search, and the seed of its dice. */
  readonly trials: number;
  readonly seed: number;
  /** Periods the rule looks ahead at most. */
  readonly ruleAhead: number;
  readonly onProgress?: Solving['onProgress'];
}

export interface SolvedPlan {
  readonly proposal: Proposal;
  /** Whether the programme was solved; else the plan is the rule's, searched on. */
  readonly programmed: boolean;
  /** Share by which the programme's plan may be above the best, where that is proven. */
  readonly gap: number | null;
}

export function solvePlan({ living, costing }: Solvable, solve: Solve, solving: PlanSolving): SolvedPlan {
  const { problem } = living;
  const ruled = searchFrom(costing, rulePlan(living, solving.ruleAhead), solving);
  const found = programmed(problem, solve, { solving, start: ruled });
  const others = found ? [searchFrom(costing, allowedFrom(problem, found.decided), solving)] : [];
  const best = others.reduce((least, each) => (each.cost < least.cost ? each : least), ruled);
  return { proposal: proposed(living, best), programmed: found !== null, gap: found?.gap ?? null };
}

export function proposed(living: Living, decided: Decisions): Proposal {
  const { packs, cups, rests } = decided;
  return { packs, cups, rests, flows: flowsOf(living, decided), value: costOfPlan(living, decided) };
}

interface Programming {
  readonly solving: PlanSolving;
  readonly start: Decisions & { readonly cost: number };
}

interface Programmed {
  readonly decided: Decisions;
  readonly gap: number | null;
}

/** What the programme decides; null where the solver fails. */
function programmed(problem: PlanProblem, solve: Solve, { solving, start }: Programming): Programmed | null {
  const laid = programmeOf({ ...problem, wholeUntil: solving.whole });
  const scale = Number.isFinite(start.cost) ? Math.max(Number.MIN_VALUE, Math.abs(start.cost)) : 1;
  const found = solve(laid.programme, {
    gap: solving.gap * scale,
    seconds: solving.seconds,
    start: startOf(laid, start),
    ...(solving.onProgress ? { onProgress: solving.onProgress } : {}),
  });
  if (!('columns' in found)) return null;
  const decided = decisionsOf(laid, found);
  return { decided, gap: solving.whole > 0 ? gapOf(found, scale) : null };
}

const gapOf = ({ value, bound }: Found, scale: number): number => Math.max(0, value - bound) / scale;

/** Packs and cups of a plan as the first guess of the solver. */
function startOf(laid: Laid, { packs, cups }: Decisions): NonNullable<Solving['start']> {
  const columns: number[] = [];
  const values: number[] = [];
  const put = (column: number, value: number) => {
    columns.push(column);
    values.push(value);
  };
  laid.packs.forEach((parcel, i) => {
    parcel.forEach((breaks, j) => {
      const [only] = breaks;
      if (breaks.length === 1 && only !== undefined) put(only, packs[i]?.[j] ?? 0);
    });
    put(laid.sent[i] as number, Number(packs[i]?.some((count) => count > 0) ?? false));
  });
  laid.cups.forEach((column, i) => {
    put(column, cups[i] ?? 0);
  });
  return { columns, values };
}
