/** The order in which a keeper walks past the animals: shelf by shelf as arranged, then as placed on the shelf. */
import { grouped } from './grouped.ts';

/** Where animals stand together. */
export interface ShelfPlace {
  /** Code of the room. */
  readonly room: string;
  readonly shelf: string;
}

interface Placed extends ShelfPlace {
  readonly code: string;
  /** From 1 on as arranged; 0 where nobody has placed it, which comes after those that are. */
  readonly shelfPosition: number;
}

const byPlace = new Intl.Collator('en', { numeric: true });
const PARTED_BY = '|';

/** A shelf's name in forms and addresses: its room's code, which has no bar, and the shelf. */
export const shelfKey = ({ room, shelf }: ShelfPlace): string => `${room}${PARTED_BY}${shelf}`;

/** The shelf a key names; of a room alone the shelf is null. */
export function placeOfKey(key: string): { readonly room: string; readonly shelf: string | null } {
  const at = key.indexOf(PARTED_BY);
  return at < 0 ? { room: key, shelf: null } : { room: key.slice(0, at), shelf: key.slice(at + 1) };
}

export const sameShelf = (a: ShelfPlace, b: ShelfPlace): boolean => a.room === b.room && a.shelf === b.shelf;

/** Room by room, and A2 before A10: the order of shelves nobody has arranged. */
export const byName = (a: ShelfPlace, b: ShelfPlace): number =>
  byPlace.compare(a.room, b.room) || byPlace.compare(a.shelf, b.shelf);

/** Shelves as arranged; one that is not in the arrangement comes after those that are, by name. */
function byWalk(walk: readonly ShelfPlace[]): (a: ShelfPlace, b: ShelfPlace) => number {
  const places = new Map(walk.map((shelf, at) => [shelfKey(shelf), at]));
  const placeOf = (shelf: ShelfPlace) => places.get(shelfKey(shelf)) ?? walk.length;
  return (a, b) => placeOf(a) - placeOf(b) || byName(a, b);
}

/** Those that stand on one shelf: as placed, and then those nobody has placed, by code. */
const onShelf = (a: Placed, b: Placed): number =>
  Number(a.shelfPosition === 0) - Number(b.shelfPosition === 0) ||
  a.shelfPosition - b.shelfPosition ||
  byPlace.compare(a.code, b.code);

export function inWalkOrder<T extends Placed>(rows: readonly T[], walk: readonly ShelfPlace[]): readonly T[] {
  const shelves = byWalk(walk);
  return [...grouped(rows, shelfKey).values()]
    .sort(([a], [b]) => shelves(a!, b!))
    .flatMap((shelf) => shelf.toSorted(onShelf));
}

/** Each shelf once, in the order its first row comes. */
export function shelvesAmong(rows: readonly ShelfPlace[]): readonly ShelfPlace[] {
  const found = new Map(rows.map(({ room, shelf }) => [shelfKey({ room, shelf }), { room, shelf }]));
  return [...found.values()];
}

/** Codes in the order they were given out: A2 before A10. */
export const byCode = (a: string, b: string): number => byPlace.compare(a, b);
