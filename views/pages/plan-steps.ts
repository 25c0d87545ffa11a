/** Steps in words: what is to be done, with all sizes that are taken out of one bin at once. */
import { headsOf, isTakenOut, type PlanStep, type TakenOut } from '../../src/husbandry/plan/index.ts';
import { lengthRange, listed } from '../format.ts';
import { nameOf, preyName } from '../names.ts';
import { lineTitle, manyHeads, type PlanNames, type PlanSaid, whenWords } from './plan-words.ts';

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

/** 'Order 500 small house crickets from Marrowgate Feeders, by Thursday' */
export const dueTitle = (step: PlanStep, said: PlanNames & Pick<PlanSaid, 'today'>): string =>
  `${stepTitle(step, said)}, ${whenWords(step.line, said)}`;

/** '25 of 34–45 mm' */
export function sizeWords({ heads, fromMm, toMm }: TakenOut, { unit }: PlanNames): string {
  const size = fromMm === null || toMm === null ? 'any size' : lengthRange(fromMm, toMm, unit);
  return `${manyHeads(heads)} of ${size}`;
}
