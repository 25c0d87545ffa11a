/**
 * What flows cost beside the decisions, told from the words of a plan's problem: late, missed, prepared, capped, kept,
 * not ready, breeders short, less what the end is worth as handed out.
 */
import type { PlanEater, PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import type { Flows } from '../../../src/husbandry/plan/proposal.ts';

const sum = (values: Iterable<number>): number => [...values].reduce((a, b) => a + b, 0);

export function livedCents(problem: PlanProblem, flows: Flows): number {
  const { eaters, places, pools, periods } = problem;
  const weeks = [...Array(periods).keys()];
  const eaten = eaters.map((eater, e) => sum(weeks.map((t) => mealCents(eater, { e, t, flows }))));
  const standing = places.map(({ keepCents, floor }, p) =>
    sum(
      flows.left[p]!.map((heads, t) => {
        const breeders = floor ? sum(heads.map((n, node) => n * floor.counts[node]!)) : 0;
        return keepCents * sum(heads) + (floor ? floor.cents * Math.max(0, floor.least[t]! - breeders) : 0);
      }),
    ),
  );
  const ready = pools.map(({ fare, least, cents }) =>
    sum(
      weeks.map((t) => {
        const items = sum(fare.map((each) => each.items * flows.left[each.place]![t]![each.node]!));
        return cents * Math.max(0, least[t]! - items);
      }),
    ),
  );
  return sum(eaten) + sum(standing) + sum(ready) - endCents(problem, flows);
}

function mealCents(eater: PlanEater, { e, t, flows }: { e: number; t: number; flows: Flows }): number {
  const use = flows.use[e]![t]!;
  const over = eater.caps.map(({ share, cents }, cap) => {
    const items = sum(eater.fare.map((each, k) => (each.cap === cap ? each.items * use[k]! : 0)));
    return cents * Math.max(0, items - share * eater.wanted[t]!);
  });
  return (
    sum(eater.fare.map(({ cents }, k) => cents * use[k]!)) +
    sum(over) +
    eater.lateCents * flows.late[e]![t]! +
    eater.missedCents * flows.missed[e]![t]!
  );
}

/** The dearest eater is served first, each with what will be past it first, as long as it wants more by then. */
function endCents({ eaters, periods }: PlanProblem, { left }: Flows): number {
  const there = left.map((weeks) => Float64Array.from(weeks[periods - 1]!));
  const order = eaters.map(({ end }) => end).sort((a, b) => b.cents - a.cents);
  let worth = 0;
  for (const { fare, weekly, cents } of order) {
    let given = 0;
    for (const { place, node, items, span, until } of [...fare].sort((a, b) => a.until - b.until)) {
      const wants = Math.max(0, Math.min(weekly * span, weekly * until - given));
      const taken = Math.min(there[place]![node]!, wants / items);
      there[place]![node]! -= taken;
      given += taken * items;
      worth += cents * taken * items;
    }
  }
  return worth;
}
