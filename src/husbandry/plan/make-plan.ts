/** Makes a plan: laid out, solved for several chances of stock that stands ready, judged, improved, told. */
import { type Solve, solver } from '../../maths/linear-programme.ts';
import type { Snapshot } from '../snapshot.ts';
import type { PlanAnswer } from './answer.ts';
import { faultsOf } from './check-plan.ts';
import { coversOf } from './covers.ts';
import { type Bench, benchFor, judgePlan, type Verdict } from './judge-plan.ts';
import { layOut, withReady } from './lay-out.ts';
import { linesOf } from './lines.ts';
import { obstaclesOf } from './obstacles.ts';
import type { PlanProblem } from './problem.ts';
import type { Proposal } from './proposal.ts';
import type { PlanProgress, PlanQuestion } from './question.ts';
import { explained } from './reasons.ts';
import { rulePlan } from './rule-plan.ts';
import { solvePlan } from './solve-plan.ts';
import { supposing } from './supposing.ts';
import { wholeOf } from './whole.ts';

export type Telling = (progress: PlanProgress) => void;

/** A plan that was tried, with what the engine says of it. */
export interface Tried {
  readonly level: number;
  readonly problem: PlanProblem;
  readonly proposal: Proposal;
  readonly made: PlanAnswer['made'];
  readonly verdict: Verdict;
}

/** The plan of a room; the same room, question and seed give the same plan. */
export async function makePlan(
  snapshot: Snapshot,
  question: PlanQuestion,
  onProgress: Telling = () => undefined,
): Promise<PlanAnswer> {
  onProgress({ step: 'laying out', share: 0, cents: null });
  const solve = await solver();
  const bench = benchFor(layOut(supposing(snapshot, question.supposed), question));
  const tried = tryLevels(bench, solve, onProgress);
  const best = bestOf(tried);
  const lines = linesOf(bench.laid, best.proposal, question.wishes);
  const reasons = question.explained !== false;
  return {
    revision: snapshot.revision,
    day: snapshot.today,
    periods: bench.laid.periods,
    made: best.made,
    gap: gapOf(best),
    trouble: best.made === 'rule' ? 'The solver found no plan in its time.' : null,
    safetyLevel: best.level,
    lines: reasons ? explained(lines, { bench, best, onProgress }) : lines,
    whole: wholeOf(bench, best, lines),
    cover: coversOf(bench.laid, best.problem, best.proposal),
    obstacles: obstaclesOf(bench, best, question),
  };
}

/** Chances of ready stock in turn: more where a target was missed, less where all were met, none twice. */
function tryLevels(bench: Bench, solve: Solve, onProgress: Telling): Tried[] {
  const { policy } = bench.laid.snapshot.facts;
  const levels = [...policy.planSafetyLevels.value].sort((a, b) => a - b);
  const most = policy.planTries.value;
  const tried: Tried[] = [];
  let at = levels.indexOf(policy.planSafetyLevels.value[0]);
  while (tried.length < most && at >= 0 && at < levels.length) {
    const level = levels[at] as number;
    if (tried.some((each) => each.level === level)) break;
    onProgress({ step: 'solving', share: tried.length / (most + 1), cents: null });
    const one = tryLevel(bench, solve, level);
    tried.push(one);
    if (brings(tried) === 'nothing') break;
    at += one.verdict.met ? -1 : 1;
  }
  return tried;
}

/** Whether the last chance asked for brought more meals than the one before; where it brings none, more will not. */
function brings(tried: readonly Tried[]): 'something' | 'nothing' {
  const [before, last] = tried.slice(-2);
  if (!before || !last || before.verdict.met || last.level < before.level) return 'something';
  const { missedMeals } = last.verdict;
  return missedMeals.mean < before.verdict.missedMeals.mean ? 'something' : 'nothing';
}

function tryLevel(bench: Bench, solve: Solve, level: number): Tried {
  const { policy } = bench.laid.snapshot.facts;
  const problem = withReady(bench.laid, level);
  const solved = solvePlan(problem, solve, {
    gap: policy.planGap.value,
    seconds: policy.planSeconds.value,
    stride: policy.planStride.value,
  });
  const isSound = solved !== null && faultsOf(problem, solved, policy.planSlack.value).length === 0;
  const proposal = isSound ? solved : rulePlan(problem, policy.planRuleWeeks.value);
  return {
    level,
    problem,
    proposal,
    made: isSound ? 'programme' : 'rule',
    verdict: judgePlan(bench, proposal),
  };
}

/** Of those that meet every target the cheapest; where none does, the one of least cost with what is missed priced in. */
function bestOf(tried: readonly Tried[]): Tried {
  const met = tried.filter(({ verdict }) => verdict.met);
  const among = met.length > 0 ? met : tried;
  return among.reduce((best, each) => (each.verdict.score < best.verdict.score ? each : best));
}

/** Share above the bound; null where nothing is proven. */
function gapOf({ proposal: { value, bound } }: Tried): number | null {
  if (!Number.isFinite(bound)) return null;
  return Math.max(0, value - bound) / Math.max(Math.abs(value), Number.MIN_VALUE);
}
