/** A plan for a room that is supposed otherwise may do what the plan beside it does: what that decides, by the keys of its lines. */
import { allowedFrom } from './allowed.ts';
import type { PlanLine } from './answer.ts';
import type { PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

/** So many packs, cups or weeks of a line. */
export interface Decided {
  readonly key: string;
  readonly amount: number;
}

/** What the lines of a plan decide; harvests and culls follow from it. */
export const decidedIn = (lines: readonly PlanLine[]): readonly Decided[] =>
  lines.flatMap((line): Decided[] => {
    switch (line.what) {
      case 'order':
        return [{ key: line.key, amount: line.packs }];
      case 'start':
        return [{ key: line.key, amount: line.cups }];
      case 'rest':
        return [{ key: line.key, amount: line.weeks }];
      default:
        return [];
    }
  });

/** The same in another problem, as far as it can be done there. */
export function likewise(problem: PlanProblem, decided: readonly Decided[]): Decisions {
  const amounts = new Map(decided.map(({ key, amount }) => [key, amount]));
  return allowedFrom(problem, {
    packs: problem.parcels.map(({ packs }) => packs.map(({ key }) => amounts.get(key) ?? 0)),
    cups: problem.starts.map(({ key }) => amounts.get(key) ?? 0),
    rests: problem.rests.map(({ key, own }) => amounts.get(key) ?? own),
  });
}
