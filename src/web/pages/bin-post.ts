/** What the forms of a bin's page share: their address, where they lead, and the lengths of a size chosen. */

import type { Context } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { type BinAct, paths } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import { loadSnapshot } from '../../actions/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, type Result } from '../../husbandry/result.ts';
import { showBin } from './bin.ts';
import { type Lengths, lengthsChosen } from './choices.ts';
import type { House } from './house.ts';
import { codeOf, route } from './route.ts';
import { typed } from './typed.ts';

export const day = typed(civilDay);
export const at = (act: BinAct): string => route(paths.binAct(':code', act));

/** The form of an act: back to the bin when it is done, the page again when it is refused. */
export const about = (house: House, act: BinAct) => ({
  form: () => act,
  next: (c: Context) => paths.bin(codeOf(c)),
  again: (c: Context, refused: Refused) => showBin(house, c, refused),
});

interface Chosen {
  readonly value: string;
  readonly field: string;
}

/** Lengths of a size chosen for what is in this bin. */
export async function lengthsOf(
  { context }: House,
  code: string,
  { value, field }: Chosen,
): Promise<Result<Lengths>> {
  const { bins, facts } = await loadSnapshot(context);
  const species = facts.species.get(bins.find((bin) => bin.code === code)?.species ?? '');
  return species === undefined
    ? err(problem('unknown-bin', `There is no bin "${code}" in use.`))
    : lengthsChosen(value, species, field);
}
