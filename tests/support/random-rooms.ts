/** Rooms drawn at random for properties: animals and bins out of the mixed collection, deliveries on the way. */
import fc from 'fast-check';
import type { Snapshot } from '../../src/husbandry/snapshot.ts';
import { facts, mixedAnimals, mixedBins, policyWith, snapshotWith, TODAY } from './room.ts';

const ANIMALS = mixedAnimals(80);

const deliveries = fc.array(
  fc.record({
    bin: fc.constantFrom('B1', 'B2', 'B3', 'B5'),
    day: fc.integer({ min: 1, max: 9 }),
    heads: fc.integer({ min: 5, max: 200 }),
    fromMm: fc.integer({ min: 3, max: 14 }),
  }),
  { maxLength: 3 },
);

/** A room of up to twenty animals and all kinds of bins, some stocked thinly. */
export const rooms: fc.Arbitrary<Snapshot> = fc
  .record({
    animals: fc.subarray(ANIMALS, { minLength: 1, maxLength: 20 }),
    scale: fc.integer({ min: 1, max: 20 }),
    bins: fc.subarray(['B4', 'B6', 'B7', 'B8', 'B9']),
    deliveries,
    seed: fc.nat(),
    day: fc.integer({ min: 16, max: 34 }),
    swing: fc.integer({ min: 0, max: 8 }),
  })
  .map((drawn) => {
    const kept = ['B1', 'B2', 'B3', 'B5', ...drawn.bins];
    const bins = mixedBins(drawn.scale).filter(({ code }) => kept.includes(code));
    const speciesOf = new Map(bins.map(({ code, species }) => [code, species]));
    return snapshotWith({
      animals: drawn.animals,
      bins,
      seed: drawn.seed,
      deliveries: drawn.deliveries.map(({ bin, day, heads, fromMm }, i) => ({
        code: `D${i}`,
        bin,
        species: speciesOf.get(bin)!,
        lot: { heads, fromMm, toMm: fromMm + 2 },
        day: TODAY + day,
      })),
      rooms: [{ code: 'room', name: 'Room', dayTempC: drawn.day, nightTempC: drawn.day - drawn.swing }],
      facts: { ...facts, policy: policyWith({ replicates: 12, actReplicates: 8 }) },
    });
  });
