/**
 * A plan without the orders that the engine finds no use for: the search knows the room only roughly, and what it buys
 * for what it takes to be a shortage may be in nobody's way. Each near order is left out in turn, the dearest first, and
 * stays out where that costs less with what is missed priced in, and no target more is missed for it.
 */
import { isAllowed } from './allowed.ts';
import type { Bench } from './judge-plan.ts';
import { livingOf } from './living.ts';
import { breakCents } from './parcel-cost.ts';
import type { PlanProblem } from './problem.ts';
import { type Decisions, withoutLine } from './proposal.ts';
import { proposed } from './solve-plan.ts';
import { judged, type Tried } from './tried.ts';

export function weeded(bench: Bench, plan: Tried): Tried {
  const living = livingOf(plan.problem);
  let best = plan;
  for (const key of nearOrders(bench, plan)) {
    const rest = withoutLine(best.problem, best.proposal, key);
    if (!isAllowed(best.problem, rest)) continue;
    const proposal = proposed(living, rest);
    const said = judged(bench, { ...best, proposal });
    if (said.score < best.score && said.unserved <= best.unserved) best = { ...best, proposal, ...said };
  }
  return best;
}

/** Orders that come so early that the engine sees most of what they are for, the dearest first. */
function nearOrders({ laid, days }: Bench, { problem, proposal }: Tried): string[] {
  const until = laid.snapshot.today + days / 2;
  return problem.parcels
    .flatMap(({ packs }, i) =>
      (laid.parcels[i]?.comes ?? until) < until ? linesIn(packs, proposal.packs[i]) : [],
    )
    .sort((a, b) => b.cents - a.cents || (a.key < b.key ? -1 : 1))
    .map(({ key }) => key);
}

const linesIn = (packs: PlanProblem['parcels'][number]['packs'], row: Decisions['packs'][number] = []) =>
  packs.flatMap((pack, j) => {
    const count = row[j] ?? 0;
    return count > 0 ? [{ key: pack.key, cents: count * breakCents(pack, count) }] : [];
  });
