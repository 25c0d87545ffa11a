/** Why a colony is left alone: what it comes to, and what it would come to if it were fed from. */
import { exactly } from '../../maths/estimate.ts';
import { totalHeads } from '../larder/index.ts';
import type { PlanLine, Reason } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import { flowsOf } from './lived.ts';
import { livingOf } from './living.ts';
import { type Flows, withoutLine } from './proposal.ts';
import { restEnds } from './rests.ts';
import type { Tried } from './tried.ts';

type Rest = Extract<PlanLine, { what: 'rest' }>;

const nothing = { missedMeals: exactly(0), dangers: exactly(0), cents: exactly(0) };

/** Heads in the mean, at the end of the plan: what it spares now is worth what it grows to. */
export function restReason(line: Rest, { periods }: LaidOut, { problem, proposal }: Tried): Reason {
  const place = problem.rests.find(({ key }) => key === line.key)?.place ?? 0;
  const atEnd = ({ left }: Flows) => totalHeads(left[place]?.at(-1) ?? new Float64Array(0));
  const heads = atEnd(proposal.flows);
  const without = atEnd(flowsOf(livingOf(problem), withoutLine(problem, proposal, line.key)));
  return {
    feeds: [],
    without: nothing,
    makesLittleDifference: heads - without < 1,
    centsPerEaten: null,
    grows: { heads, without, day: restEnds(periods, periods.length) },
  };
}
