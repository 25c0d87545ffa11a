/** A small keeper's room: two animals, a group, two bins and a cup. */
import { addAnimal, addBin, addRoom } from '../../src/actions/index.ts';
import { freshContext, good, type Room } from './store-at.ts';

/** R1 with A1, A2, A3 (a group of five), B1 and B2 of crickets. */
export async function furnished(): Promise<Room> {
  const context = await freshContext();
  good(await addRoom(context, { name: 'Warm room', dayTempC: 26, nightTempC: 22 }));
  const animal = { kind: 'test-spider', room: 'R1', gaugeMm: 40 };
  good(await addAnimal(context, { ...animal, name: 'Ash' }));
  good(await addAnimal(context, { ...animal, name: 'Birch' }));
  good(await addAnimal(context, { ...animal, name: 'Sac of five', count: 5, gaugeMm: 9 }));
  const bin = { species: 'test-cricket', room: 'R1', capacity: 500 };
  good(await addBin(context, { ...bin, name: 'Small', lot: { heads: 200, fromMm: 4, toMm: 6 } }));
  good(await addBin(context, { ...bin, name: 'Large' }));
  return context;
}

/** One animal offered five crickets from B1. */
export const offering = (animal: string) => ({
  animal,
  outcome: 'offered' as const,
  bin: 'B1',
  heads: 5,
  fromMm: 4,
  toMm: 6,
});
