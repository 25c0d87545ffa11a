/** Shelves as the walk's pages name them: a key for forms, a label for eyes, who lives there. */
import type { WalkShelf } from '../../../views/pages/walk.tsx';
import { type ShelfPlace, sameShelf, shelvesAmong } from '../../husbandry/walk.ts';
import { placeOf } from './meals.ts';
import type { Visit } from './visit.ts';

const PARTED_BY = '|';

/** A shelf's name in forms: its room's code, which has no bar, and the shelf. */
const keyOf = ({ room, shelf }: ShelfPlace): string => `${room}${PARTED_BY}${shelf}`;

export function shelfOf(key: string): ShelfPlace {
  const [room = '', ...shelf] = key.split(PARTED_BY);
  return { room, shelf: shelf.join(PARTED_BY) };
}

/** Every shelf somebody lives on, in the order of the walk. */
export const shelvesOf = ({ snapshot, names }: Visit): readonly WalkShelf[] =>
  shelvesAmong(snapshot.animals).map((shelf) => {
    const here = snapshot.animals.filter((animal) => sameShelf(animal, shelf));
    return {
      ...shelf,
      key: keyOf(shelf),
      label: placeOf(here[0]!, snapshot),
      animals: here.map(({ code }) => names.animals.get(code) ?? code),
    };
  });
