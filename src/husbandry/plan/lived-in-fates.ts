/** What becomes of a plan in the mean of its fates: who goes without, and who eats what. */
import { settleInFates } from './fate-cost.ts';
import { roomFor } from './fate-room.ts';
import type { Fates } from './fates.ts';
import { livingOf } from './living.ts';
import type { PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';

export interface LivedInFates {
  /** Items missed over all periods by each of the fine groups. */
  readonly missed: Float64Array;
  /** Heads eaten by period, fine group and fine node, at [(period * groups + group) * nodes + node]. */
  readonly eaten: Float64Array;
}

/** Lives decisions through in all fates; `fine`: their problem with those who eat told finely. */
export function livedInFates(
  { fates }: { readonly fates: Fates },
  fine: PlanProblem,
  decided: Decisions,
): LivedInFates {
  const living = livingOf(fine);
  const eaten = new Float64Array(fates.periods * fates.eaters * living.nodes);
  const room = { ...roomFor(fates, living, fates.count), eaten };
  settleInFates(room, decided);
  return { missed: room.missed, eaten: eaten.map((heads) => heads / fates.count) };
}
