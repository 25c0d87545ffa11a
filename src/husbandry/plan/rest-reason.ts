/** Why a colony is left alone: what it comes to, and what it would come to if it were fed from. */
import { totalHeads } from '../larder/index.ts';
import type { PlanLine, Reason } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import { flowsOf } from './lived.ts';
import { livingOf } from './living.ts';
import { type Decisions, withoutLine } from './proposal.ts';
import type { Tried } from './tried.ts';

type Rest = Extract<PlanLine, { what: 'rest' }>;

/** Heads at the end of the plan, in the mean. */
export function grownBy(
  line: Rest,
  laid: LaidOut,
  { problem, proposal }: Tried,
): NonNullable<Reason['grows']> {
  const living = livingOf(problem);
  const place = problem.rests.find(({ key }) => key === line.key)?.place ?? 0;
  const atEnd = (decided: Decisions) => {
    const { left } = flowsOf(living, decided);
    return totalHeads(left[place]?.at(-1) ?? new Float64Array(0));
  };
  const last = laid.periods.at(-1);
  return {
    heads: atEnd(proposal),
    without: atEnd(withoutLine(problem, proposal, line.key)),
    day: last ? last.from + last.days : line.until,
  };
}
