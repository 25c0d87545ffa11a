/** What a plan decides, and what the programme expects of it. */
import type { Solved } from '../../maths/linear-programme.ts';
import type { PlanProblem } from './problem.ts';
import type { Laid } from './programme.ts';

export interface Decisions {
  /** Packs by parcel and pack. */
  readonly packs: readonly (readonly number[])[];
  /** Cups by start. */
  readonly cups: readonly number[];
  /** Periods in which it is left alone, by rest. */
  readonly rests: readonly number[];
}

/** All decisions as they are, but one line; what is left alone is so for as long as the keeper does already. */
export const withoutLine = (
  { parcels, starts, rests: places }: PlanProblem,
  { packs, cups, rests }: Decisions,
  key: string,
): Decisions => ({
  packs: packs.map((row, i) => row.map((count, j) => (parcels[i]?.packs[j]?.key === key ? 0 : count))),
  cups: cups.map((count, i) => (starts[i]?.key === key ? 0 : count)),
  rests: rests.map((periods, i) => (places[i]?.key === key ? (places[i]?.own ?? 0) : periods)),
});

/** Flows that go with decisions: heads used by eater, period and fare, and so on. */
export interface Flows {
  readonly use: readonly (readonly Float64Array[])[];
  readonly late: readonly Float64Array[];
  readonly missed: readonly Float64Array[];
  /** Heads left by place, period and node. */
  readonly left: readonly (readonly Float64Array[])[];
}

export interface Proposal extends Decisions {
  readonly flows: Flows;
  /** What it costs as lived through, penalties and end values in it. */
  readonly value: number;
}

type Found = Extract<Solved, { columns: Float64Array }>;

/** Packs and cups of a solution, broken where the programme leaves them so; it leaves nothing alone but what has to be. */
export const decisionsOf = (laid: Laid, { columns }: Found): Decisions => ({
  packs: laid.packs.map((parcel) =>
    parcel.map((breaks) => breaks.reduce((sum, column) => sum + (columns[column] as number), 0)),
  ),
  cups: laid.cups.map((column) => columns[column] as number),
  rests: laid.rests,
});

/** Flows of a solution, for those who check the programme. */
export function programmeFlows(problem: PlanProblem, laid: Laid, { columns }: Found): Flows {
  const at = (first: number, count: number) =>
    columns.slice(first, first + count).map((amount) => Math.max(0, amount));
  return {
    use: laid.use.map((periods, e) => periods.map((first) => at(first, problem.eaters[e]?.fare.length ?? 0))),
    late: laid.late.map((first) => at(first, problem.periods)),
    missed: laid.missed.map((first) => at(first, problem.periods)),
    left: laid.left.map((periods, p) => periods.map((first) => at(first, problem.places[p]?.nodes ?? 0))),
  };
}
