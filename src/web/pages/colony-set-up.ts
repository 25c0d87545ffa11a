/** Setting up a colony as it was asked for: a bin of the larder with its starters. */
import { sentenceCase } from '../../../views/format.ts';
import { addBin, type Done } from '../../actions/index.ts';
import type { Starters } from '../../husbandry/colony/index.ts';
import { adultLot, chainOf, type Lot } from '../../husbandry/larder/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, type Result } from '../../husbandry/result.ts';
import type { ColonyAsked } from './colony-asked.ts';
import type { House } from './house.ts';

/** The colony as a bin, its starters counted today. */
export async function setUp(
  { context }: House,
  { species, question, room }: ColonyAsked,
  formId: string | undefined,
): Promise<Result<Done<{ bin: string }>>> {
  if (question === null) return err(problem('nothing-asked', 'Put right what is marked first.'));
  return addBin(context, {
    name: `${sentenceCase(species.commonName)} colony`,
    species: species.code,
    role: 'colony',
    room,
    keepAdults: true,
    capacity: question.binSize?.capacity ?? null,
    space: question.binSize?.space ?? null,
    ...contentOf(question.starters, species),
    formId,
  });
}

/** Adults are told apart; what is in the bin then is known by sex. */
const contentOf = (
  starters: Starters,
  species: PreySpecies,
): { lot: Lot; sexes?: { females: number; males: number } } => {
  if (starters.kind === 'young') {
    const { heads, fromMm, toMm } = starters;
    return { lot: { heads, fromMm, toMm } };
  }
  const { females, males } = starters;
  return { lot: adultLot(chainOf(species), females + males), sexes: { females, males } };
};
