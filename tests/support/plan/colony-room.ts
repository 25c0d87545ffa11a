/** A colony of roaches, and tarantulas large enough to eat of it. */
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { animalWith, binWith, TODAY } from '../room.ts';

export const hungryOnes = (count: number): Animal[] =>
  Array.from({ length: count }, (_, i) =>
    animalWith({
      code: `A${i}`,
      kind: 'acanthoscurria-geniculata',
      gaugeMm: 60 + 4 * (i % 30),
      lastTaken: TODAY - 1 - (i % 9),
    }),
  );

/** So many heads of all sizes, with room for many times as many. */
export const roachColony = (heads: number): Bin =>
  binWith({
    ...{ code: 'B1', species: 'blaptica-dubia', role: 'colony', capacity: 3000, keepAdults: true },
    events: [{ kind: 'counted', day: TODAY - 1, heads, fromMm: null, toMm: null }],
  });
