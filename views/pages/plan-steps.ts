/** Steps as a keeper does them: all that is taken out of one bin at once is one step, whatever its sizes. */
import type { PlanLine, Reason } from '../../src/husbandry/plan/index.ts';
import { lengthRange, listed } from '../format.ts';
import { nameOf, preyName } from '../names.ts';
import { isTakenOut, lineTitle, manyHeads, type PlanNames, type TakenOut } from './plan-words.ts';

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

/** 'Harvest 39 dubia roaches from Dubia colony: 25 of 34–45 mm and 14 of 3–6 mm' */
export function stepTitle(step: PlanStep, said: PlanNames): string {
  const { line, lines } = step;
  if (lines.length < 2 || !isTakenOut(line)) return lineTitle(line, said);
  const heads = headsOf(step);
  const prey = preyName(said.names.species, line.species, heads);
  const verb = line.what === 'harvest' ? 'Harvest' : 'Cull';
  const sizes = listed((lines as readonly TakenOut[]).map((each) => sizeWords(each, said)));
  return `${verb} ${manyHeads(heads)} ${prey} from ${nameOf(said.names.bins, line.bin)}: ${sizes}`;
}

/** '25 of 34–45 mm' */
export function sizeWords({ heads, fromMm, toMm }: TakenOut, { unit }: PlanNames): string {
  const size = fromMm === null || toMm === null ? 'any size' : lengthRange(fromMm, toMm, unit);
  return `${manyHeads(heads)} of ${size}`;
}

type Fed = Reason['feeds'][number];

/** Whom a step feeds, each name once. */
export function feedsOf({ lines }: PlanStep): readonly Fed[] {
  const byName = new Map<string, Fed>();
  for (const fed of lines.flatMap(({ reason }) => reason?.feeds ?? [])) {
    const before = byName.get(fed.name) ?? { ...fed, items: 0 };
    byName.set(fed.name, {
      ...before,
      items: before.items + fed.items,
      from: Math.min(before.from, fed.from),
      to: Math.max(before.to, fed.to),
    });
  }
  return [...byName.values()].sort((a, b) => b.items - a.items);
}
