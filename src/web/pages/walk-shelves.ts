/** Shelves as the walk's pages name them: a key for forms, a label for eyes, who lives there. */

import type { WalkShelf } from '../../../views/pages/walk.tsx';
import { grouped } from '../../husbandry/grouped.ts';
import { placeOfKey, type ShelfPlace, shelfKey } from '../../husbandry/walk.ts';
import { placeOf } from './meals.ts';
import type { Visit } from './visit.ts';

export function shelfOf(key: string): ShelfPlace {
  const { room, shelf } = placeOfKey(key);
  return { room, shelf: shelf ?? '' };
}

/** Every shelf somebody lives on, in the order of the walk. */
export const shelvesOf = ({ snapshot, names }: Visit): readonly WalkShelf[] =>
  [...grouped(snapshot.animals, shelfKey)].map(([key, here]) => {
    const { room, shelf } = here[0]!;
    return {
      room,
      shelf,
      key,
      label: placeOf(here[0]!, snapshot),
      animals: here.map(({ code }) => names.animals.get(code) ?? code),
    };
  });
