/** Demand groups of a plan, each name once, those who go short first. */
import type { GroupCover } from '../../src/husbandry/plan/index.ts';

export const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Groups of one name as one: what they want adds up, what stands ready for them is the same prey. */
export function coversByName(cover: readonly GroupCover[]): readonly GroupCover[] {
  const byName = new Map<string, GroupCover>();
  for (const group of cover) {
    const before = byName.get(group.name);
    byName.set(group.name, before === undefined ? group : together(before, group));
  }
  return [...byName.values()].sort((a, b) => sum(b.missed) - sum(a.missed) || sum(b.wanted) - sum(a.wanted));
}

const together = (a: GroupCover, b: GroupCover): GroupCover => ({
  ...a,
  wanted: added(a.wanted, b.wanted),
  eaten: added(a.eaten, b.eaten),
  late: added(a.late, b.late),
  missed: added(a.missed, b.missed),
  ready: most(a.ready, b.ready),
  safety: most(a.safety, b.safety),
});

const added = (a: readonly number[], b: readonly number[]): number[] => a.map((n, i) => n + (b[i] ?? 0));
const most = (a: readonly number[], b: readonly number[]): number[] =>
  a.map((n, i) => Math.max(n, b[i] ?? 0));
