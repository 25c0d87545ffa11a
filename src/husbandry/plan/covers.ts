/** What each group wants, eats and misses over the periods, in the mean of the plan's fates. */
import type { GroupCover } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import { eatenBy } from './lived-in-fates.ts';
import type { Tried } from './tried.ts';

/** By group, in its own items; groups told as one share alike what their class wants and gets. */
export function coversOf(
  { fine, eating, periods }: LaidOut,
  { problem, lived }: Pick<Tried, 'problem' | 'lived'>,
): GroupCover[] {
  const groups = fine.eaters.length;
  const safetyOf = (group: string): number[] => {
    const own = eating.find(({ members }) => members.some((each) => each.eating.group.key === group));
    const pool = problem.pools.find(({ key }) => key === own?.group.key);
    return Array.from(pool?.least ?? new Float64Array(periods.length));
  };
  return fine.eating.flatMap(({ members, fares, wanted: all }, e) => {
    const each = (byMoment: Float64Array) => periods.map((_, t) => byMoment[t * groups + e] as number);
    const eaten = periods.map((_, t) => eatenBy(fine, lived, { e, t, from: () => true }).items);
    const wanted = each(lived.wanted);
    const missed = fares.length > 0 ? each(lived.missed) : wanted;
    const late = each(lived.late);
    const ready = each(lived.ready);
    return members.map(({ eating: { group, wanted: own } }): GroupCover => {
      const share = sumOf(all) > 0 ? sumOf(own) / sumOf(all) : 0;
      const part = (items: readonly number[]) => items.map((n) => n * share);
      return {
        group: group.key,
        name: group.name,
        urgency: group.rule.urgency,
        wanted: part(wanted),
        eaten: part(eaten),
        late: part(late),
        missed: part(missed),
        ready,
        safety: safetyOf(group.key),
      };
    });
  });
}

const sumOf = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);
