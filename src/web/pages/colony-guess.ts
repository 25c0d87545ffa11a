/** What the form of a colony start begins with: this room, its colony, and what it eats. */
import { spaceText } from '../../../views/pages/bin-form.tsx';
import { sizeField } from '../../../views/pages/colony-fields.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { BinAnswer } from '../../husbandry/supply/index.ts';
import { DAYS_PER_WEEK } from '../../husbandry/units.ts';
import { sizeOptions } from './choices.ts';
import { isBred } from './colony-asked.ts';

/** Fields as if typed. */
export type Guess = Readonly<Record<string, string>>;

const USUAL = 'blaptica-dubia';
const STARTING_FEMALES = 10;

/** The prey asked for, else that of the first colony here, else the usual roach. */
export function speciesGuessed({ bins, facts }: Snapshot, asked: string | undefined): PreySpecies {
  const bred = [...facts.species.values()].filter(isBred);
  const colony = bins.find(({ role }) => role === 'colony')?.species;
  const found = [asked, colony, USUAL].flatMap((code) => bred.find((each) => each.code === code) ?? []);
  return (found[0] ?? bred[0]) as PreySpecies;
}

interface Eaten {
  readonly bins: readonly BinAnswer[];
  readonly horizonDays: number;
}

export function guessFor(snapshot: Snapshot, species: PreySpecies, eaten: Eaten): Guess {
  const here = snapshot.bins.find((bin) => bin.role === 'colony' && bin.species === species.code);
  const females = STARTING_FEMALES;
  const perMale = species.laying?.femalesPerMale?.value ?? 1;
  const room = here?.room ?? snapshot.rooms[0]?.code ?? '';
  return {
    room,
    begin: 'adults',
    females: `${females}`,
    males: `${Math.ceil(females / perMale)}`,
    size: sizeOptions(species)[0]?.value ?? '',
    ...(here?.space ? { space: spaceText(here.space) } : {}),
    ...(here?.capacity ? { capacity: `${here.capacity}` } : {}),
    ...wantedOf(species, eaten),
  };
}

/** What the room eats of the prey in a week, under the sizes its bins hold. */
function wantedOf(species: PreySpecies, { bins, horizonDays }: Eaten): Guess {
  const sizes = species.sizeClasses.value;
  const wanted = new Map<string, number>();
  for (const bin of bins.filter((each) => each.species === species.code && each.eaten > 0)) {
    const { mid } = bin.lengthsNow;
    const size = sizes.find(({ fromMm, toMm }) => fromMm <= mid && mid <= toMm);
    if (size) wanted.set(size.name, (wanted.get(size.name) ?? 0) + (bin.eaten * DAYS_PER_WEEK) / horizonDays);
  }
  return Object.fromEntries(
    [...wanted]
      .map(([name, heads]) => [sizeField(name), Math.round(heads)] as const)
      .filter(([, heads]) => heads > 0)
      .map(([field, heads]) => [field, `${heads}`]),
  );
}
