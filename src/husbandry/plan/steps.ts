/** Steps as a keeper does them: all that is taken out of one bin at once is one step, whatever its sizes. */
import type { PlanLine, Reason } from './answer.ts';

/** Harvests and culls follow from what is eaten and grows; all else is decided. */
export type TakenOut = Extract<PlanLine, { what: 'harvest' | 'cull' }>;
export const isTakenOut = (line: PlanLine): line is TakenOut =>
  line.what === 'harvest' || line.what === 'cull';

export interface PlanStep {
  /** The line that stands for it. */
  readonly line: PlanLine;
  readonly lines: readonly PlanLine[];
}

/** In the order in which they are to be done. */
export function stepsOf(lines: readonly PlanLine[]): readonly PlanStep[] {
  const byStep = new Map<string, PlanLine[]>();
  for (const line of lines.toSorted((a, b) => a.actBy - b.actBy)) {
    const key = stepKey(line);
    byStep.set(key, [...(byStep.get(key) ?? []), line]);
  }
  return [...byStep.values()].map((all) => ({ line: all[0] as PlanLine, lines: all }));
}

const stepKey = (line: PlanLine): string =>
  isTakenOut(line)
    ? `${line.what} ${line.bin} ${line.actBy} ${line.what === 'cull' ? line.why : ''}`
    : line.key;

export const headsOf = ({ lines }: PlanStep): number => lines.reduce((sum, { heads }) => sum + heads, 0);

type Fed = Reason['feeds'][number];

/** Whom a step feeds, each name once. */
export function feedsOf({ lines }: PlanStep): readonly Fed[] {
  const byName = new Map<string, Fed>();
  for (const fed of lines.flatMap(({ reason }) => reason?.feeds ?? [])) {
    const before = byName.get(fed.name) ?? { ...fed, heads: 0 };
    byName.set(fed.name, {
      ...before,
      heads: before.heads + fed.heads,
      from: Math.min(before.from, fed.from),
      to: Math.max(before.to, fed.to),
    });
  }
  return [...byName.values()].sort((a, b) => b.heads - a.heads);
}
