/**
 * Solves a plan's problem: whole numbers in the near periods first, the later ones broken; what was found is kept and
 * the next periods follow (relax and fix). The bound of the first, looser programme holds for the whole.
 */
import type { LinearProgramme, Solve, Solved, Solving } from '../../maths/linear-programme.ts';
import type { PlanProblem } from './problem.ts';
import { type Laid, programmeOf } from './programme.ts';
import { type Decisions, type Proposal, proposalOf } from './proposal.ts';

type Found = Extract<Solved, { columns: Float64Array }>;

export interface PlanSolving extends Solving {
  /** Periods made whole at a time. */
  readonly stride: number;
}

/** The best plan found, or null where the solver finds none. */
export function solvePlan(problem: PlanProblem, solve: Solve, solving: PlanSolving): Proposal | null {
  const { stride, ...asked } = solving;
  let fixed: Decisions | null = null;
  let bound = Number.NEGATIVE_INFINITY;
  for (let until = Math.min(stride, problem.periods); ; until = Math.min(until + stride, problem.periods)) {
    const laid = programmeOf({ ...problem, wholeUntil: until });
    const programme = fixed ? keeping(problem, laid, { fixed, until: until - stride }) : laid.programme;
    const found = solve(programme, asked);
    if (!('columns' in found)) return null;
    if (fixed === null) bound = found.bound;
    const proposal: Proposal = { ...proposalOf(problem, laid, found as Found), bound };
    if (until === problem.periods) return rounded(proposal);
    fixed = proposal;
  }
}

interface Keeping {
  readonly fixed: Decisions;
  /** Periods before this are decided. */
  readonly until: number;
}

/** The programme with what was decided for the periods before. */
function keeping({ parcels, starts }: PlanProblem, laid: Laid, { fixed, until }: Keeping): LinearProgramme {
  const least = (laid.programme.least as Float64Array).slice();
  const most = laid.programme.most.slice();
  const hold = (column: number, amount: number) => {
    least[column] = amount;
    most[column] = amount;
  };
  parcels.forEach((parcel, i) => {
    if (parcel.period >= until) return;
    parcel.packs.forEach((pack, j) => {
      const count = Math.round(fixed.packs[i]?.[j] ?? 0);
      const open = pack.breaks.findLastIndex(({ fromPacks }) => fromPacks <= Math.max(1, count));
      laid.packs[i]?.[j]?.forEach((column, b) => {
        hold(column, b === open ? count : 0);
      });
    });
  });
  starts.forEach(({ period }, i) => {
    if (period < until) hold(laid.cups[i] as number, Math.round(fixed.cups[i] ?? 0));
  });
  return { ...laid.programme, least, most };
}

const rounded = (proposal: Proposal): Proposal => ({
  ...proposal,
  packs: proposal.packs.map((parcel) => parcel.map(Math.round)),
  cups: proposal.cups.map(Math.round),
});
