/** Makes a plan: laid out, solved for several chances of stock that stands ready, judged, improved, told. */
import { type Solve, solver } from '../../maths/linear-programme.ts';
import type { Snapshot } from '../snapshot.ts';
import type { PlanAnswer } from './answer.ts';
import { faultsOf } from './check-plan.ts';
import { coversOf } from './covers.ts';
import { boughtIn, boxedCulls, cullLines, overfull } from './culls.ts';
import { benchFor, throughAll } from './judge-plan.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { type Decided, likewise } from './likeness.ts';
import { linesOf } from './lines.ts';
import { meetable } from './meetable.ts';
import { obstaclesOf } from './obstacles.ts';
import type { Decisions } from './proposal.ts';
import type { PlanProgress, PlanQuestion } from './question.ts';
import { explained } from './reasons.ts';
import { rulePlan } from './rule-plan.ts';
import { searchFrom } from './search-plan.ts';
import { type Solvable, solvable } from './solvable.ts';
import { proposed, solvePlan } from './solve-plan.ts';
import { barredBy, supposing } from './supposing.ts';
import { type Benches, bestOf, judged, type Weighed, weighed } from './tried.ts';
import { weeded } from './weeded.ts';
import { wholeOf } from './whole.ts';
import { wishTrouble } from './wish-trouble.ts';
import { withReady } from './with-ready.ts';

export type Telling = (progress: PlanProgress) => void;

/** The plan of a room; the same room, question and seed give the same plan. */
export async function makePlan(
  snapshot: Snapshot,
  given: PlanQuestion,
  onProgress: Telling = () => undefined,
): Promise<PlanAnswer> {
  const question = { ...given, wishes: [...given.wishes, ...barredBy(given.supposed)] };
  onProgress({ step: 'laying out', share: 0, cents: null });
  const { effort = 'whole', beside = [] } = question;
  const solve = await solver();
  const room = supposing(snapshot, question.supposed);
  const asked = layOut(room, question);
  const { kept, obstacles } = wishTrouble(asked, question.wishes);
  const wished = obstacles.length === 0 ? asked : layOut(room, { ...question, wishes: kept });
  const laid = { ...wished, problem: meetable(wished.problem) };
  const bench = benchFor(laid, effort);
  const benches = { bench, through: effort === 'quick' ? bench : throughAll(bench) };
  const best = effort === 'quick' ? quickPlan(benches) : wholePlan(benches, solve, { beside, onProgress });
  const culls = cullLines(laid, best.proposal);
  const boxed = boxedCulls(laid, culls, boughtIn(laid, best.proposal));
  const rest = culls.filter((line) => !boxed.includes(line));
  const lines = linesOf(laid, best, { wishes: kept, culls: rest });
  return {
    revision: snapshot.revision,
    day: snapshot.today,
    periods: bench.laid.periods,
    made: best.made,
    gap: best.gap,
    trouble: effort === 'whole' ? troubleWith(laid, best) : null,
    safetyLevel: best.level,
    lines: question.explained !== false ? explained(lines, { bench, best, onProgress }) : lines,
    whole: wholeOf(benches.through, best, lines),
    cover: coversOf(bench.laid, best),
    obstacles: [
      ...obstacles,
      ...obstaclesOf(benches.through, best, question),
      ...overfull(laid, { culls, wishes: kept, boxed }),
    ],
  };
}

/** Where nobody eats there is nothing to solve. */
const troubleWith = ({ problem }: LaidOut, { made }: Weighed): string | null =>
  made === 'rule' && problem.eaters.length > 0 ? 'The solver found no plan in its time.' : null;

/** The best of several chances of ready stock, proven, and without what the engine finds no use for. */
function wholePlan(
  benches: Benches,
  solve: Solve,
  { beside, onProgress }: { beside: readonly Decided[]; onProgress: Telling },
): Weighed {
  const tried = tryLevels(benches, solve, onProgress);
  const like = beside.length > 0 ? [tryLike(benches, beside)] : [];
  const found = proven(benches, solve, bestOf([...tried, ...like]));
  onProgress({ step: 'improving', share: 1 / 2, cents: null });
  const chosen = improved(benches, found);
  const rest = weeded(benches.bench, chosen);
  return rest === chosen ? chosen : bestOf([chosen, weighed(benches, rest)]);
}

/** Chances of ready stock in turn: more where a target was missed, less where all were met, none twice. */
function tryLevels(benches: Benches, solve: Solve, onProgress: Telling): Weighed[] {
  const { policy } = benches.bench.laid.snapshot.facts;
  const levels = [...policy.planSafetyLevels.value].sort((a, b) => a - b);
  const most = policy.planTries.value;
  const tried: Weighed[] = [];
  let at = levels.indexOf(policy.planSafetyLevels.value[0]);
  while (tried.length < most && at >= 0 && at < levels.length) {
    const level = levels[at] as number;
    if (tried.some((each) => each.level === level)) break;
    onProgress({ step: 'solving', share: tried.length / (2 * (most + 1)), cents: null });
    const one = tryLevel(benches, solve, { level, proves: false });
    tried.push(one);
    if (brings(tried) === 'nothing') break;
    at += one.metInAll ? -1 : 1;
  }
  return tried;
}

/** Whether the last chance asked for brought more meals than the one before; where it brings none, more will not. */
function brings(tried: readonly Weighed[]): 'something' | 'nothing' {
  const [before, last] = tried.slice(-2);
  if (!before || !last || before.metInAll || last.level < before.level) return 'something';
  const { missedMeals } = last.all;
  return missedMeals.mean < before.all.missedMeals.mean ? 'something' : 'nothing';
}

function tryLevel(benches: Benches, solve: Solve, { level, proves }: Trying): Weighed {
  const { bench } = benches;
  const { policy } = bench.laid.snapshot.facts;
  const problem = withReady(bench.laid, level);
  const { proposal, programmed, gap } = solvePlan(solvable(bench, problem, level), solve, {
    whole: proves ? policy.planStride.value : 0,
    gap: policy.planGap.value,
    seconds: policy.planSeconds.value,
    trials: policy.planNeighbours.value,
    seed: bench.laid.snapshot.seed,
    ruleAhead: policy.planRuleWeeks.value,
  });
  const [fault] = faultsOf(problem, proposal, policy.planSlack.value);
  if (fault) throw new Error(`a plan that cannot be: ${fault.sentence}`);
  return weighed(benches, {
    level,
    problem,
    proposal,
    gap,
    made: programmed ? 'programme' : 'rule',
    ...judged(bench, { level, problem, proposal }),
  });
}

/** The plan searched on for longer; it takes its place where it is better. */
function improved(benches: Benches, chosen: Weighed): Weighed {
  const { bench } = benches;
  const { facts, seed } = bench.laid.snapshot;
  const { level, problem } = chosen;
  const { living, costing } = solvable(bench, problem, level);
  const trials = facts.policy.planLastTrials.value;
  const searched = searchFrom(costing, chosen.proposal, { trials, seed });
  if (searched.cost >= costing.costOf(chosen.proposal)) return chosen;
  const proposal = proposed(living, searched);
  return bestOf([
    chosen,
    weighed(benches, { ...chosen, proposal, ...judged(bench, { level, problem, proposal }) }),
  ]);
}

/** The rule searched on. */
function quickPlan(benches: Benches): Weighed {
  const { planRuleWeeks, planQuickTrials } = benches.bench.laid.snapshot.facts.policy;
  return searchedOn(benches, planQuickTrials.value, ({ living }) => rulePlan(living, planRuleWeeks.value));
}

/** What another plan decides, searched on. */
const tryLike = (benches: Benches, beside: readonly Decided[]): Weighed =>
  searchedOn(benches, benches.bench.laid.snapshot.facts.policy.planNeighbours.value, ({ costing }) =>
    likewise(costing.problem, beside),
  );

/** Decisions searched on without a solver, at the first chance of ready stock. */
function searchedOn(benches: Benches, trials: number, startOf: (room: Solvable) => Decisions): Weighed {
  const { bench } = benches;
  const { facts, seed } = bench.laid.snapshot;
  const level = facts.policy.planSafetyLevels.value[0] as number;
  const problem = withReady(bench.laid, level);
  const room = solvable(bench, problem, level);
  const proposal = proposed(room.living, searchFrom(room.costing, startOf(room), { trials, seed }));
  return weighed(benches, {
    level,
    problem,
    proposal,
    gap: null,
    made: 'rule',
    ...judged(bench, { level, problem, proposal }),
  });
}

interface Trying {
  readonly level: number;
  /** Whether the programme is solved in whole numbers, which proves how good the plan is. */
  readonly proves: boolean;
}

/** The plan solved in whole numbers too: it tells how good it is, and takes its place where it is better. */
function proven(benches: Benches, solve: Solve, chosen: Weighed): Weighed {
  const again = tryLevel(benches, solve, { level: chosen.level, proves: true });
  const { gap, made } = again;
  return { ...bestOf([chosen, again]), gap, made: chosen.made === 'programme' ? chosen.made : made };
}
