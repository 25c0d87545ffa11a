/** Dubia kept at 28 °C for sixty medium ones a week: the colony by which the others are judged. */
import { preySpecies, speciesByCode } from '../../src/facts/prey/index.ts';
import { type Breeding, breedingOf, type Wanted } from '../../src/husbandry/colony/breeding.ts';
import { fewestBreeders } from '../../src/husbandry/colony/breeding-stock.ts';
import type { ColonyQuestion } from '../../src/husbandry/colony/index.ts';
import { solver } from '../../src/maths/linear-programme.ts';
import { constant } from './rearing.ts';

export const solve = await solver();

export const breedingAt = (code: string, tempC: number): Breeding =>
  breedingOf(speciesByCode.get(code)!, constant(tempC))!;

/** A size of a species by the name the trade has for it. */
export function sizeOf(code: string, name: string): Pick<Wanted, 'fromMm' | 'toMm'> {
  const found = preySpecies.find((species) => species.code === code)!.sizeClasses.value;
  const { fromMm, toMm } = found.find((size) => size.name === name)!;
  return { fromMm, toMm };
}

const DUBIA = 'blaptica-dubia';
export const sixtyMedium: readonly Wanted[] = [{ heads: 60, ...sizeOf(DUBIA, 'medium') }];
export const dubia = breedingAt(DUBIA, 28);
export const dubiaStock = fewestBreeders(solve, dubia, sixtyMedium)!;

/** The same as a keeper asks it. */
export const dubiaQuestion: ColonyQuestion = {
  species: DUBIA,
  dayC: 28,
  nightC: 28,
  wanted: sixtyMedium,
  starters: { kind: 'adults', females: 10, males: 4 },
  binSize: { capacity: 500 },
  prices: { perHead: 0.25, starters: 60, perWeek: 3 },
};
