/** Rooms for the Sunday benchmark: one that lasts the week and one that runs short, small and large. */
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import type { Animal } from '../../src/husbandry/animals/animal.ts';
import type { Snapshot } from '../../src/husbandry/snapshot.ts';
import { countedBin, mixedAnimals, mixedBins, snapshotWith } from '../support/room.ts';

/** Half way, in the logarithm of its gauge, to the middle of the adult's: nobody is too small for prey on sale. */
function grown(animal: Animal): Animal {
  const [small, large] = kindsByCode.get(animal.kind)!.adultGaugeMm.value;
  return { ...animal, gaugeMm: Math.sqrt(animal.gaugeMm * Math.sqrt(small * large)) };
}

export const CASES = ['lasts 200', 'lasts 2000', 'runs short 200', 'runs short 2000'] as const;

export function sundayRoom(name: string): Snapshot {
  const animals = Number(name.split(' ').at(-1));
  const scale = animals * 1.2;
  if (name.startsWith('runs short'))
    return snapshotWith({ animals: mixedAnimals(animals), bins: mixedBins(scale) });
  const plenty = [
    countedBin('C1', 'acheta-domesticus', { heads: 20 * scale, fromMm: 1.6, toMm: 4 }),
    countedBin('C2', 'drosophila-melanogaster', { heads: 20 * scale, fromMm: 2, toMm: 3 }),
    countedBin('C6', 'tribolium-confusum', { heads: 40 * scale, fromMm: 0.8, toMm: 2 }),
    countedBin('C3', 'gryllodes-sigillatus', { heads: 20 * scale, fromMm: 4, toMm: 18 }),
    countedBin('C4', 'periplaneta-lateralis', { heads: 10 * scale, fromMm: 10, toMm: 28 }),
    countedBin('C5', 'blaptica-dubia', { heads: 10 * scale, fromMm: 20, toMm: 42 }),
  ];
  return snapshotWith({
    animals: mixedAnimals(animals).map(grown),
    bins: [...mixedBins(scale), ...plenty],
  });
}
