/** What to take out of which bin before the round, added up by size and by what must be done to it. */

import { type LengthUnit, lengthRange } from '../../../views/format.ts';
import { type Names, nameOf, preyName } from '../../../views/names.ts';
import type { PickingLine } from '../../../views/pages/evening-sheet.tsx';
import type { PreyOffer } from '../../husbandry/appetite/index.ts';
import { grouped } from '../../husbandry/grouped.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import type { Facts } from '../../husbandry/snapshot.ts';

const SAID = /^(extra small|small|medium|large|adult)$/;

/** The trade's word for prey of these lengths, such as 'medium'; empty where its sizes have no word. */
function sizeWord(species: PreySpecies | undefined, { fromMm, toMm }: PreyOffer): string {
  const middle = (fromMm + toMm) / 2;
  const sizes = species?.sizeClasses.value ?? [];
  const size = sizes.find((each) => each.fromMm <= middle && middle <= each.toMm);
  return [size?.name ?? '', ...(size?.aliases ?? [])].find((word) => SAID.test(word)) ?? '';
}

interface Telling {
  readonly facts: Facts;
  readonly names: Names;
  readonly unit: LengthUnit;
}

/** One line for each bin and size, bins in the order they are first wanted. */
export function pickingOf(offers: readonly PreyOffer[], telling: Telling): readonly PickingLine[] {
  const groups = grouped(offers, (offer) =>
    JSON.stringify([offer.bin, sizeWord(telling.facts.species.get(offer.species), offer)]),
  );
  const bins = [...new Set(offers.map(({ bin }) => bin))];
  return [...groups.values()]
    .toSorted((a, b) => bins.indexOf(a[0]!.bin) - bins.indexOf(b[0]!.bin))
    .map((group) => lineOf(group, telling));
}

function lineOf(group: readonly PreyOffer[], { facts, names, unit }: Telling): PickingLine {
  const { bin, species } = group[0]!;
  const heads = headsIn(group);
  const word = sizeWord(facts.species.get(species), group[0]!);
  const from = Math.min(...group.map(({ fromMm }) => fromMm));
  const to = Math.max(...group.map(({ toMm }) => toMm));
  return {
    bin,
    binName: nameOf(names.bins, bin),
    heads,
    prey: `${word} ${preyName(names.species, species, heads)}`.trim(),
    lengths: lengthRange(from, to, unit),
    killed: headsIn(group.filter(({ killFirst, portions }) => killFirst && portions === 1)),
    cut: headsIn(group.filter(({ portions }) => portions > 1)),
  };
}

const headsIn = (offers: readonly PreyOffer[]): number => offers.reduce((sum, { heads }) => sum + heads, 0);
