/** What can be chosen in forms: kinds, prey, rooms, bins, currencies and the sizes the trade sells. */

import { sentenceCase } from '../../../views/format.ts';
import type { Option } from '../../../views/partials/form.tsx';
import { currencyName } from '../../actions/money-fields.ts';
import type { Bin } from '../../husbandry/larder/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Facts, Room } from '../../husbandry/snapshot.ts';
import type { Mm } from '../../husbandry/units.ts';
import { plural } from '../../husbandry/words.ts';

export const kindOptions = ({ kinds }: Facts): readonly Option[] =>
  [...kinds.values()].map(({ code, commonName, group }) => ({
    value: code,
    label: sentenceCase(commonName),
    group: sentenceCase(plural(group)),
  }));

export const speciesOptions = ({ species }: Facts): readonly Option[] =>
  [...species.values()].map(({ code, commonName }) => ({
    value: code,
    label: sentenceCase(plural(commonName)),
  }));

export const roomOptions = (rooms: readonly Room[]): readonly Option[] =>
  rooms.map(({ code, name }) => ({ value: code, label: name }));

export const binOptions = (bins: readonly Bin[]): readonly Option[] =>
  bins.map(({ code, name }) => ({ value: code, label: name }));

/** Every currency, by its name. */
export const currencyOptions: readonly Option[] = Intl.supportedValuesOf('currency')
  .map((code) => ({ value: code, label: `${currencyName(code)} (${code})` }))
  .toSorted((a, b) => a.label.localeCompare(b.label, 'en-GB'));

const PARTED_BY = '|';

/** The sizes a species is sold in; a value names the species too. */
export const sizeOptions = ({ code, sizeClasses }: PreySpecies): readonly Option[] =>
  sizeClasses.value.map(({ name }) => ({ value: `${code}${PARTED_BY}${name}`, label: name }));

/** Code of the species a chosen size is of. */
export const speciesChosen = (value: string): string => value.split(PARTED_BY)[0] ?? '';

/** The option of the size that a length has; undefined between and beyond the sizes. */
export const sizeOptionAt = (species: PreySpecies, mm: Mm): string | undefined => {
  const at = species.sizeClasses.value.findIndex(({ fromMm, toMm }) => fromMm <= mm && mm <= toMm);
  return sizeOptions(species)[at]?.value;
};

/** Sizes of every species, in groups. */
export const allSizeOptions = ({ species }: Facts): readonly Option[] =>
  [...species.values()].flatMap((each) =>
    sizeOptions(each).map((option) => ({ ...option, group: sentenceCase(plural(each.commonName)) })),
  );

export interface Lengths {
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** Lengths of a chosen size, which must be one of this species. */
export function lengthsChosen(value: string, species: PreySpecies, field: string): Result<Lengths> {
  const [code, ...words] = value.split(PARTED_BY);
  const name = words.join(PARTED_BY);
  const size = species.sizeClasses.value.find((each) => code === species.code && each.name === name);
  if (size !== undefined) return ok({ fromMm: size.fromMm, toMm: size.toMm });
  const sizes = species.sizeClasses.value.map((each) => each.name).join(', ');
  const sentence = `"${name === '' ? value : name}" is not a size of the ${species.commonName}; its sizes are ${sizes}.`;
  return err(problem('other-size', sentence, field));
}

/** From the smallest prey that is fed to the longest, larva or grown: for a bin whose sizes nobody told. */
export function everyLength({ lengthByDevelopment, adultLengthMm }: PreySpecies): Lengths {
  const lengths = [...lengthByDevelopment.value.map(([, mm]) => mm), adultLengthMm.value];
  return { fromMm: lengths[0] as number, toMm: Math.max(...lengths) };
}
