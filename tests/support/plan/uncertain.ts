/** A textbook's uncertain demand as a plan sees it: its mean is eaten, and what stands ready is a pool's quantile. */
import { kinds } from '../../../src/facts/kinds/index.ts';
import { poolsOf } from '../../../src/husbandry/plan/pools.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { certainPolicy } from '../room.ts';

/** Draws of a distribution, each as likely: the middles of equal shares. */
export const drawsOf = (count: number, quantile: (p: number) => number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => quantile((i + 0.5) / count));

export const meanOf = (draws: Float64Array): number => draws.reduce((a, b) => a + b, 0) / draws.length;

export interface Uncertain {
  /** Draws of each period's demand. */
  readonly draws: readonly Float64Array[];
  /** Chance that what stands ready is enough. */
  readonly level: number;
  /** Price of an item that is not ready. */
  readonly cents: number;
}

/** The problem with a pool for its one eater; nothing is unknown but the demand, and what is ordered comes at once. */
export function withPool(problem: PlanProblem, { draws, level, cents }: Uncertain): PlanProblem {
  const [eater] = problem.eaters;
  const group = {
    key: eater!.key,
    name: eater!.key,
    rule: kinds[0]!.stages[0]!,
    animals: [],
    windows: new Map(),
  };
  const wanted = Float64Array.from(draws, meanOf);
  const eating = [{ group, wanted, byReplicate: draws, lateMost: wanted, mealItems: 1, headsEach: 1 }];
  const pools = poolsOf({
    eating,
    eaters: problem.eaters,
    policy: certainPolicy,
    seed: 1,
    level,
    leadDays: 0,
    readyCents: [cents],
  });
  return { ...problem, pools };
}
