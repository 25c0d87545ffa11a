/** What each group wants, eats and misses over the periods, as the programme expects it. */
import type { GroupCover } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import type { PlanProblem } from './problem.ts';
import type { Proposal } from './proposal.ts';

/** By group; groups planned as one share what their class eats in proportion to what they want. */
export function coversOf(laid: LaidOut, problem: PlanProblem, { flows }: Proposal): GroupCover[] {
  return laid.eating.flatMap(({ members, fares, wanted }, e) => {
    const pool = problem.pools.find(({ key }) => key === laid.eating[e]?.group.key);
    const periods = Array.from(wanted, (_, t) => t);
    const eaten = periods.map((t) =>
      fares.reduce((sum, { items }, k) => sum + items * (flows.use[e]?.[t]?.[k] ?? 0), 0),
    );
    const ready = periods.map((t) =>
      fares.reduce((sum, { items, place, node }) => sum + items * (flows.left[place]?.[t]?.[node] ?? 0), 0),
    );
    return members.map(({ eating: { group, wanted: own } }): GroupCover => {
      const part = (values: ArrayLike<number>) =>
        periods.map((t) =>
          (wanted[t] as number) > 0
            ? ((values[t] as number) * (own[t] as number)) / (wanted[t] as number)
            : 0,
        );
      const missed = fares.length > 0 ? part(flows.missed[e] as Float64Array) : Array.from(own);
      return {
        group: group.key,
        name: group.name,
        urgency: group.rule.urgency,
        wanted: Array.from(own),
        eaten: part(eaten),
        late: part(flows.late[e] as Float64Array),
        missed,
        ready,
        safety: Array.from(pool?.least ?? new Float64Array(periods.length)),
      };
    });
  });
}
