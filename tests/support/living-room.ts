/** A room of living stock with the product's own facts: a colony, a bin of its young, crickets and mealworms. */
import { addBin, addRoom, countBin, firstRoom, loadSnapshot } from '../../src/actions/index.ts';
import type { Bin } from '../../src/husbandry/larder/index.ts';
import { binNow, holdingOf } from '../../src/husbandry/supply/index.ts';
import { facts } from './room.ts';
import { freshContext, good, type Room } from './store-at.ts';

/** R1 at its usual warmth and R2, a cellar; B1 a dubia colony, B2 dubia, B3 crickets, B4 mealworms, all counted today. */
export async function livingRoom(): Promise<Room> {
  const room = { ...(await freshContext()), facts };
  good(await firstRoom(room));
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  const dubia = { species: 'blaptica-dubia', room: 'R1' };
  good(await addBin(room, { ...dubia, name: 'Dubia colony', role: 'colony', keepAdults: true }));
  good(await addBin(room, { ...dubia, name: 'Dubia tub' }));
  good(await addBin(room, { species: 'acheta-domesticus', room: 'R1', name: 'Crickets' }));
  good(await addBin(room, { species: 'tenebrio-molitor', room: 'R1', name: 'Mealworms' }));
  good(await countBin(room, { bin: 'B1', heads: 600 }));
  good(await countBin(room, { bin: 'B2', heads: 90, fromMm: 8, toMm: 14 }));
  good(await countBin(room, { bin: 'B3', heads: 400, fromMm: 6, toMm: 12 }));
  good(await countBin(room, { bin: 'B4', heads: 500, fromMm: 14, toMm: 22 }));
  return room;
}

export async function binIn(room: Room, code: string): Promise<Bin> {
  const bin = (await loadSnapshot(room)).bins.find((each) => each.code === code);
  if (bin === undefined) throw new Error(`${code} is not in use`);
  return bin;
}

/** Heads in a bin today as best known; of some lengths, or of all. */
export async function headsOf(
  room: Room,
  code: string,
  lengths: { fromMm: number; toMm: number } | null = null,
): Promise<number> {
  const snapshot = await loadSnapshot(room);
  const bin = snapshot.bins.find((each) => each.code === code);
  return bin === undefined ? 0 : holdingOf(snapshot, binNow(snapshot, bin), lengths).there;
}
