/** A home at feeding time: three shelves, four of one size and a group; crickets, and roaches that fit as well. */
import { addAnimal, addBin, loadSnapshot } from '../../src/actions/index.ts';
import { filledHome, type Home } from './house.ts';
import { good } from './store-at.ts';

/** The evening the tests begin on. */
export const DAY = '2024-10-04';

/** Ash (A1, shelf A2), Cedar, Dill and Elm of Ash's size (A3 to A5, shelf A3), the group (A2, shelf A10); B4 are roaches. */
export async function fiveAtTable(): Promise<Home> {
  const home = await filledHome();
  const { room } = home;
  const like = {
    kind: 'brachypelma-hamorii',
    room: 'R1',
    gaugeMm: 50,
    lastTaken: room.date(-14),
    shelf: 'A3',
  };
  const lot = { heads: 60, fromMm: 9, toMm: 12 };
  good(await addBin(room, { name: 'Roach tub', species: 'blaptica-dubia', room: 'R1', capacity: 300, lot }));
  for (const name of ['Cedar', 'Dill', 'Elm']) good(await addAnimal(room, { ...like, name }));
  return home;
}

/** What was offered out of a bin, one line an act and evening. */
export const eventsOf = async ({ room }: Home, code: string) =>
  (await loadSnapshot(room)).bins
    .find((bin) => bin.code === code)!
    .events.flatMap((event) => (event.kind === 'offered' ? [event] : []));

export const animalOf = async ({ room }: Home, code: string) =>
  (await loadSnapshot(room)).animals.find((animal) => animal.code === code);

/** Codes of the rows shown, in order. */
export const rowsIn = (html: string): string[] =>
  [...html.matchAll(/name="animal" value="(\w+)"/g)].map(([, code]) => code!);
